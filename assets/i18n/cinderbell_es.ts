<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>AlarmFlash</name>
    <message>
        <source>Call</source>
        <translation>Aviso</translation>
    </message>
</context>
<context>
    <name>BatchPlate</name>
    <message>
        <source>ends %1</source>
        <translation>termina %1</translation>
    </message>
</context>
<context>
    <name>BellPanel</name>
    <message>
        <source>Move the bell</source>
        <translation>Mover la campana</translation>
    </message>
    <message>
        <source>now %1</source>
        <translation>ahora %1</translation>
    </message>
    <message>
        <source>Plan again</source>
        <translation>Replanificar</translation>
    </message>
    <message>
        <source>chance that all is out by the bell</source>
        <translation>probabilidad de tener todo servido a la campana</translation>
    </message>
</context>
<context>
    <name>BuffetBoard</name>
    <message>
        <source>Buffet</source>
        <translation>Bufé</translation>
    </message>
    <message>
        <source>Set-up and line</source>
        <translation>Montaje y línea</translation>
    </message>
</context>
<context>
    <name>CallPlate</name>
    <message>
        <source>since %1</source>
        <translation>desde hace %1</translation>
    </message>
    <message>
        <source>Heard</source>
        <translation>Oído</translation>
    </message>
</context>
<context>
    <name>Cautions</name>
    <message>
        <source>Open air only: burning charcoal gives off a deadly gas with no smell. Starter fluid on cold charcoal only, never on warm coals.</source>
        <translation>Solo al aire libre: el carbón encendido suelta un gas mortal sin olor. Líquido encendedor solo sobre carbón frío, nunca sobre brasas.</translation>
    </message>
    <message>
        <source>Thermometer over touch: thickest part, away from bone. Colour does not show doneness.</source>
        <translation>Termómetro antes que tacto: parte más gruesa, lejos del hueso. El color no indica cocción.</translation>
    </message>
    <message>
        <source>Dry cloths and heat gloves: a wet cloth passes heat.</source>
        <translation>Paños secos y guantes: un paño mojado deja pasar el calor.</translation>
    </message>
    <message>
        <source>Cut-resistant glove, clean board: never where raw meat lay.</source>
        <translation>Guante anticorte, tabla limpia: nunca donde hubo carne cruda.</translation>
    </message>
    <message>
        <source>Hot food 135 °F (57 °C) or above, cold food 41 °F (5 °C) or below.</source>
        <translation>Caliente a 57 °C (135 °F) o más, frío a 5 °C (41 °F) o menos.</translation>
    </message>
    <message>
        <source>Treat all ash as hot: soak it, carry it in closed metal, never indoors or in the van while it may glow.</source>
        <translation>Toda ceniza está caliente: mójela, llévela en metal cerrado, nunca dentro ni en la furgoneta si puede arder.</translation>
    </message>
    <message>
        <source>Local fire and health codes and licensed practice decide.</source>
        <translation>Deciden las normas locales de fuego y sanidad y la práctica autorizada.</translation>
    </message>
</context>
<context>
    <name>EntryLine</name>
    <message>
        <source>Correct</source>
        <translation>Corregir</translation>
    </message>
    <message>
        <source>Correct %1</source>
        <translation>Corregir %1</translation>
    </message>
</context>
<context>
    <name>EventPlate</name>
    <message>
        <source>Rehearsal</source>
        <translation>Ensayo</translation>
    </message>
    <message>
        <source>Rehearse %1</source>
        <translation>Ensayar %1</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>Open %1</source>
        <translation>Abrir %1</translation>
    </message>
    <message>
        <source>Rehearse</source>
        <translation>Ensayar</translation>
    </message>
</context>
<context>
    <name>FireBoard</name>
    <message>
        <source>Fire</source>
        <translation>Fuego</translation>
    </message>
    <message>
        <source>On the grate</source>
        <translation>En la parrilla</translation>
    </message>
    <message>
        <source>Nothing on the grate.</source>
        <translation>Nada en la parrilla.</translation>
    </message>
    <message>
        <source>Thermometer over touch: thickest part, away from bone.</source>
        <translation>Termómetro antes que tacto: parte más gruesa, lejos del hueso.</translation>
    </message>
    <message>
        <source>Coals</source>
        <translation>Brasas</translation>
    </message>
    <message>
        <source>Resting</source>
        <translation>En reposo</translation>
    </message>
    <message>
        <source>Before the next turn you may</source>
        <translation>Antes de la próxima vuelta puede</translation>
    </message>
    <message>
        <source>Next at the fire</source>
        <translation>Después en el fuego</translation>
    </message>
</context>
<context>
    <name>FoodKeys</name>
    <message>
        <source>Thickest part, middle of the pan, away from bone; wait until the figure stands still.</source>
        <translation>Parte más gruesa, centro de la charola, lejos del hueso; espere a que la cifra se detenga.</translation>
    </message>
    <message>
        <source>Write down</source>
        <translation>Anotar</translation>
    </message>
    <message>
        <source>Scale: %1</source>
        <translation>Escala: %1</translation>
    </message>
</context>
<context>
    <name>FoodSheet</name>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Slip of the finger: take it back (%1)</source>
        <translation>Fue un descuido: retirarlo (%1)</translation>
    </message>
</context>
<context>
    <name>HolderPage</name>
    <message>
        <source>Who holds this device?</source>
        <translation>¿Quién lleva este aparato?</translation>
    </message>
    <message>
        <source>Which board?</source>
        <translation>¿Qué tablero?</translation>
    </message>
    <message>
        <source>Lead</source>
        <translation>Jefe</translation>
    </message>
    <message>
        <source>The bell, the crew, the weakest link</source>
        <translation>La campana, el equipo, el punto más débil</translation>
    </message>
    <message>
        <source>Fire</source>
        <translation>Fuego</translation>
    </message>
    <message>
        <source>The grate, turns, pulls and rests</source>
        <translation>La parrilla, vueltas, salidas y reposos</translation>
    </message>
    <message>
        <source>Buffet</source>
        <translation>Bufé</translation>
    </message>
    <message>
        <source>Set-up to tick, and the line</source>
        <translation>Montaje por marcar, y la línea</translation>
    </message>
</context>
<context>
    <name>KeyPlate</name>
    <message>
        <source>Erase</source>
        <translation>Borrar</translation>
    </message>
    <message>
        <source>Minus</source>
        <translation>Menos</translation>
    </message>
</context>
<context>
    <name>Keypad</name>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
</context>
<context>
    <name>LeadBoard</name>
    <message>
        <source>Lead</source>
        <translation>Jefe</translation>
    </message>
    <message>
        <source>Weakest link</source>
        <translation>Punto más débil</translation>
    </message>
    <message>
        <source>Crew</source>
        <translation>Equipo</translation>
    </message>
    <message>
        <source>Coming up</source>
        <translation>A continuación</translation>
    </message>
</context>
<context>
    <name>LinePanPlate</name>
    <message>
        <source>%1: three quarters left</source>
        <translation>%1: quedan tres cuartos</translation>
    </message>
    <message>
        <source>%1: half left</source>
        <translation>%1: queda la mitad</translation>
    </message>
    <message>
        <source>%1: a quarter left</source>
        <translation>%1: queda un cuarto</translation>
    </message>
    <message>
        <source>A fresh pan is on the line</source>
        <translation>Ya hay charola llena en la línea</translation>
    </message>
    <message>
        <source>%1: a fresh pan is on the line</source>
        <translation>%1: ya hay charola llena en la línea</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>Cinderbell</source>
        <translation>Cinderbell</translation>
    </message>
</context>
<context>
    <name>MorePage</name>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>Run sheet</source>
        <translation>Hoja de ruta</translation>
    </message>
    <message>
        <source>Promise</source>
        <translation>Promesa</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Registro</translation>
    </message>
    <message>
        <source>Lock</source>
        <translation>Bloquear</translation>
    </message>
    <message>
        <source>Serve</source>
        <translation>Servir</translation>
    </message>
</context>
<context>
    <name>MoveBellSheet</name>
    <message>
        <source>Serve at %1</source>
        <translation>Servir a las %1</translation>
    </message>
    <message>
        <source>%1 min earlier</source>
        <translation>%1 min antes</translation>
    </message>
    <message>
        <source>%1 min later</source>
        <translation>%1 min después</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Hecho</translation>
    </message>
</context>
<context>
    <name>OptionPlate</name>
    <message>
        <source>Do this</source>
        <translation>Hacerlo</translation>
    </message>
    <message>
        <source>Do this: %1</source>
        <translation>Hacerlo: %1</translation>
    </message>
</context>
<context>
    <name>PatternColours</name>
    <message>
        <source>Colours</source>
        <translation>Colores</translation>
    </message>
    <message>
        <source>linen</source>
        <translation>lino</translation>
    </message>
    <message>
        <source>plate, ash</source>
        <translation>placa, ceniza</translation>
    </message>
    <message>
        <source>ember</source>
        <translation>brasa</translation>
    </message>
    <message>
        <source>ember wash</source>
        <translation>brasa tenue</translation>
    </message>
    <message>
        <source>cold water</source>
        <translation>agua fría</translation>
    </message>
    <message>
        <source>water wash</source>
        <translation>agua tenue</translation>
    </message>
    <message>
        <source>charcoal</source>
        <translation>carbón</translation>
    </message>
    <message>
        <source>Drawings</source>
        <translation>Dibujos</translation>
    </message>
</context>
<context>
    <name>PatternPage</name>
    <message>
        <source>Pattern book</source>
        <translation>Muestrario</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Keypad</source>
        <translation>Teclado</translation>
    </message>
    <message>
        <source>try it</source>
        <translation>pruébelo</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatura</translation>
    </message>
</context>
<context>
    <name>PatternTouches</name>
    <message>
        <source>Touches</source>
        <translation>Botones</translation>
    </message>
    <message>
        <source>Plain</source>
        <translation>Normal</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Ya</translation>
    </message>
    <message>
        <source>Settled</source>
        <translation>Resuelto</translation>
    </message>
    <message>
        <source>Quiet</source>
        <translation>Discreto</translation>
    </message>
    <message>
        <source>Not yet</source>
        <translation>Aún no</translation>
    </message>
    <message>
        <source>One of a few</source>
        <translation>Uno de varios</translation>
    </message>
    <message>
        <source>Low</source>
        <translation>Bajo</translation>
    </message>
    <message>
        <source>Medium</source>
        <translation>Medio</translation>
    </message>
    <message>
        <source>High</source>
        <translation>Alto</translation>
    </message>
    <message>
        <source>Chafers filled, lids on</source>
        <translation>Chafers con agua y tapados</translation>
    </message>
    <message>
        <source>Signs in front of every dish</source>
        <translation>Letreros delante de cada plato</translation>
    </message>
    <message>
        <source>Held</source>
        <translation>Sostenido</translation>
    </message>
    <message>
        <source>Hold: hard to take back</source>
        <translation>Mantenga: difícil de deshacer</translation>
    </message>
    <message>
        <source>Turned: chicken thighs</source>
        <translation>Volteado: muslos de pollo</translation>
    </message>
</context>
<context>
    <name>PatternType</name>
    <message>
        <source>Type</source>
        <translation>Letra</translation>
    </message>
    <message>
        <source>Title: lamb legs</source>
        <translation>Título: piernas de cordero</translation>
    </message>
    <message>
        <source>Lead: turn now</source>
        <translation>Llamada: voltee ya</translation>
    </message>
    <message>
        <source>Body: coals lit, lid closed</source>
        <translation>Texto: carbón encendido, tapa cerrada</translation>
    </message>
    <message>
        <source>Small: noted at 11:55</source>
        <translation>Menor: anotado a las 11:55</translation>
    </message>
    <message>
        <source>How far it has gone</source>
        <translation>Cuánto ha avanzado</translation>
    </message>
    <message>
        <source>States</source>
        <translation>Estados</translation>
    </message>
    <message>
        <source>waiting</source>
        <translation>en espera</translation>
    </message>
    <message>
        <source>can begin</source>
        <translation>puede empezar</translation>
    </message>
    <message>
        <source>running</source>
        <translation>en marcha</translation>
    </message>
    <message>
        <source>now</source>
        <translation>ya</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>skipped</source>
        <translation>omitido</translation>
    </message>
    <message>
        <source>A caution: a thermometer decides, a timer never does.</source>
        <translation>Un aviso: decide el termómetro, nunca el reloj.</translation>
    </message>
    <message>
        <source>A refusal: what was wrong, and the way out.</source>
        <translation>Un rechazo: qué falló y cómo salir.</translation>
    </message>
</context>
<context>
    <name>PersonPlate</name>
    <message>
        <source>then %1 · %2</source>
        <translation>luego %1 · %2</translation>
    </message>
</context>
<context>
    <name>PocketLock</name>
    <message>
        <source>Locked</source>
        <translation>Bloqueado</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Sigue</translation>
    </message>
    <message>
        <source>Slide to unlock</source>
        <translation>Deslice para desbloquear</translation>
    </message>
</context>
<context>
    <name>PromisePage</name>
    <message>
        <source>Promise</source>
        <translation>Promesa</translation>
    </message>
    <message>
        <source>Back to the lead board</source>
        <translation>Volver al tablero del jefe</translation>
    </message>
    <message>
        <source>Reckoning: every answer is planned, not guessed …</source>
        <translation>Calculando: cada respuesta se planifica, no se adivina …</translation>
    </message>
    <message>
        <source>What would help, smallest change of each kind</source>
        <translation>Lo que ayudaría: el menor cambio de cada tipo</translation>
    </message>
</context>
<context>
    <name>RecordPage</name>
    <message>
        <source>Record</source>
        <translation>Registro</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation>Controles</translation>
    </message>
    <message>
        <source>Pans</source>
        <translation>Charolas</translation>
    </message>
    <message>
        <source>Entries</source>
        <translation>Anotaciones</translation>
    </message>
    <message>
        <source>Checks and pans</source>
        <translation>Controles y charolas</translation>
    </message>
    <message>
        <source>To measure</source>
        <translation>Por medir</translation>
    </message>
    <message>
        <source>Every check of the day is done.</source>
        <translation>Todos los controles del día están hechos.</translation>
    </message>
    <message>
        <source>Forecast, nobody has measured this</source>
        <translation>Pronóstico, nadie lo ha medido</translation>
    </message>
    <message>
        <source>Pans as they stand</source>
        <translation>Cómo están las charolas</translation>
    </message>
    <message>
        <source>Test a thermometer in ice water</source>
        <translation>Probar un termómetro en agua con hielo</translation>
    </message>
</context>
<context>
    <name>RefusalBar</name>
    <message>
        <source>Understood</source>
        <translation>Entendido</translation>
    </message>
</context>
<context>
    <name>RunChart</name>
    <message>
        <source>Run sheet chart</source>
        <translation>Gráfico de la hoja de ruta</translation>
    </message>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
</context>
<context>
    <name>RunSheetPage</name>
    <message>
        <source>Run sheet</source>
        <translation>Hoja de ruta</translation>
    </message>
    <message>
        <source>By person</source>
        <translation>Por persona</translation>
    </message>
    <message>
        <source>By station</source>
        <translation>Por puesto</translation>
    </message>
    <message>
        <source>List</source>
        <translation>Lista</translation>
    </message>
    <message>
        <source>holds up the bell</source>
        <translation>retiene la campana</translation>
    </message>
    <message>
        <source>slack</source>
        <translation>holgura</translation>
    </message>
</context>
<context>
    <name>ServePage</name>
    <message>
        <source>Serve</source>
        <translation>Servir</translation>
    </message>
    <message>
        <source>Guests through the line</source>
        <translation>Invitados que ya pasaron</translation>
    </message>
    <message>
        <source>Last guest is through</source>
        <translation>Ya pasó el último invitado</translation>
    </message>
    <message>
        <source>Pans on the line, a forecast: tap what you see</source>
        <translation>Charolas en la línea, un pronóstico: toca lo que ves</translation>
    </message>
    <message>
        <source>A fresh pan for an empty pan, never topped up. Whether food may be served, the record says.</source>
        <translation>Charola llena por vacía, nunca rellenar encima. Si la comida se puede servir lo dice el registro.</translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Luz</translation>
    </message>
    <message>
        <source>Noon</source>
        <translation>Mediodía</translation>
    </message>
    <message>
        <source>Dusk</source>
        <translation>Anochecer</translation>
    </message>
    <message>
        <source>By the clock</source>
        <translation>Por la hora</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Clock</source>
        <translation>Reloj</translation>
    </message>
    <message>
        <source>24 hours</source>
        <translation>24 horas</translation>
    </message>
    <message>
        <source>12 hours</source>
        <translation>12 horas</translation>
    </message>
    <message>
        <source>Thumb</source>
        <translation>Pulgar</translation>
    </message>
    <message>
        <source>Left hand</source>
        <translation>Mano izquierda</translation>
    </message>
    <message>
        <source>Right hand</source>
        <translation>Mano derecha</translation>
    </message>
    <message>
        <source>Movement</source>
        <translation>Movimiento</translation>
    </message>
    <message>
        <source>Usual</source>
        <translation>Normal</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Ninguno</translation>
    </message>
    <message>
        <source>Rehearse</source>
        <translation>Ensayar</translation>
    </message>
    <message>
        <source>All events</source>
        <translation>Todos los eventos</translation>
    </message>
    <message>
        <source>Text size</source>
        <translation>Tamaño del texto</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>Mayor</translation>
    </message>
    <message>
        <source>Largest</source>
        <translation>Máximo</translation>
    </message>
    <message>
        <source>Local fire and health codes and licensed practice decide.</source>
        <translation>Deciden las normas locales de incendios y sanidad y la práctica autorizada.</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatura</translation>
    </message>
    <message>
        <source>Pattern book</source>
        <translation>Muestrario</translation>
    </message>
    <message>
        <source>Untouched for two minutes</source>
        <translation>Dos minutos sin tocar</translation>
    </message>
    <message>
        <source>Dim</source>
        <translation>Atenuar</translation>
    </message>
    <message>
        <source>Stay bright</source>
        <translation>Seguir con luz</translation>
    </message>
</context>
<context>
    <name>SpeedSheet</name>
    <message>
        <source>Rehearse this event</source>
        <translation>Ensayar este evento</translation>
    </message>
    <message>
        <source>A copy of the day on a clock of its own; calls ring as they will.</source>
        <translation>Una copia del día con su propio reloj; los avisos suenan igual.</translation>
    </message>
    <message>
        <source>%1×</source>
        <translation>%1×</translation>
    </message>
</context>
<context>
    <name>StartPage</name>
    <message>
        <source>Events</source>
        <translation>Eventos</translation>
    </message>
    <message>
        <source>Cinderbell</source>
        <translation>Cinderbell</translation>
    </message>
    <message>
        <source>On this device</source>
        <translation>En este aparato</translation>
    </message>
    <message>
        <source>Local fire and health codes and licensed practice decide.</source>
        <translation>Deciden las normas locales de fuego y sanidad y la práctica autorizada.</translation>
    </message>
    <message>
        <source>Demo events</source>
        <translation>Eventos de demostración</translation>
    </message>
</context>
<context>
    <name>TaskPlate</name>
    <message>
        <source>Hold: leave out</source>
        <translation>Mantener: omitir</translation>
    </message>
</context>
<context>
    <name>UndoBar</name>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
</context>
<context>
    <name>Ways</name>
    <message>
        <source>Boards</source>
        <translation>Tableros</translation>
    </message>
    <message>
        <source>Lead</source>
        <translation>Jefe</translation>
    </message>
    <message>
        <source>Fire</source>
        <translation>Fuego</translation>
    </message>
    <message>
        <source>Buffet</source>
        <translation>Bufé</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Hoja</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
</context>
<context>
    <name>cinder::face::Day</name>
    <message>
        <source>since the bell</source>
        <translation>desde la campana</translation>
    </message>
    <message>
        <source>to the bell</source>
        <translation>para la campana</translation>
    </message>
    <message>
        <source>promised %1</source>
        <translation>prometido %1</translation>
    </message>
    <message>
        <source>Ready %1</source>
        <translation>Listo %1</translation>
    </message>
    <message>
        <source>latest start %1</source>
        <translation>empezar a más tardar %1</translation>
    </message>
    <message>
        <source>ends %1</source>
        <translation>termina %1</translation>
    </message>
    <message>
        <source>Rehearsal %1×</source>
        <translation>Ensayo %1×</translation>
    </message>
    <message>
        <source>%1 of %2 done</source>
        <translation>%1 de %2 hechos</translation>
    </message>
    <message>
        <source>No sound on this device: calls flash the whole board.</source>
        <translation>Sin sonido en este aparato: los avisos iluminan todo el tablero.</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>four days of five by %1</source>
        <translation>cuatro de cada cinco días a las %1</translation>
    </message>
    <message>
        <source>15 min earlier: %1</source>
        <translation>15 min antes: %1</translation>
    </message>
    <message>
        <source>Battery %1 %</source>
        <translation>Batería %1 %</translation>
    </message>
</context>
<context>
    <name>cinder::face::FoodEntry</name>
    <message>
        <source>Ice and water, stirred</source>
        <translation>Hielo con agua, revuelto</translation>
    </message>
    <message>
        <source>Which pan?</source>
        <translation>¿Qué charola?</translation>
    </message>
    <message>
        <source>Which time control?</source>
        <translation>¿Qué control de tiempo?</translation>
    </message>
    <message>
        <source>What does it show?</source>
        <translation>¿Qué muestra?</translation>
    </message>
    <message>
        <source>Which thermometer?</source>
        <translation>¿Qué termómetro?</translation>
    </message>
    <message>
        <source>Why is it corrected?</source>
        <translation>¿Por qué se corrige?</translation>
    </message>
    <message>
        <source>%1 is out of limit.</source>
        <translation>%1 está fuera de límite.</translation>
    </message>
    <message>
        <source>What is done about it?</source>
        <translation>¿Qué se hace?</translation>
    </message>
    <message>
        <source>Ice point</source>
        <translation>Punto de hielo</translation>
    </message>
    <message>
        <source>Corrects: %1</source>
        <translation>Corrige: %1</translation>
    </message>
    <message>
        <source>Typed wrong</source>
        <translation>Mal tecleado</translation>
    </message>
    <message>
        <source>Thermometer misread</source>
        <translation>Termómetro mal leído</translation>
    </message>
    <message>
        <source>Tip was not in the middle</source>
        <translation>La punta no estaba en el centro</translation>
    </message>
    <message>
        <source>%1, new</source>
        <translation>%1, nueva</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Medir</translation>
    </message>
    <message>
        <source>Leaves temperature control</source>
        <translation>Deja el control de temperatura</translation>
    </message>
    <message>
        <source>its clock starts and ends with discard</source>
        <translation>su reloj empieza y termina con desechar</translation>
    </message>
    <message>
        <source>Begin to cool it</source>
        <translation>Empezar a enfriarlo</translation>
    </message>
    <message>
        <source>Keep it cold</source>
        <translation>Guardarlo frío</translation>
    </message>
    <message>
        <source>its record has no gap</source>
        <translation>su registro no tiene huecos</translation>
    </message>
    <message>
        <source>Hold to discard</source>
        <translation>Mantener para desechar</translation>
    </message>
</context>
<context>
    <name>cinder::face::FoodRecord</name>
    <message>
        <source>Corrective action</source>
        <translation>Acción correctiva</translation>
    </message>
    <message>
        <source>Time control: %1</source>
        <translation>Control de tiempo: %1</translation>
    </message>
    <message>
        <source>Cooling begun</source>
        <translation>Enfriado empezado</translation>
    </message>
    <message>
        <source>Discarded</source>
        <translation>Desechado</translation>
    </message>
    <message>
        <source>Kept cold</source>
        <translation>Guardado frío</translation>
    </message>
    <message>
        <source>Ice point passed</source>
        <translation>Punto de hielo correcto</translation>
    </message>
    <message>
        <source>Ice point FAILED</source>
        <translation>Punto de hielo FALLÓ</translation>
    </message>
    <message>
        <source>Before the fire</source>
        <translation>Antes del fuego</translation>
    </message>
    <message>
        <source>SKIPPED: %1</source>
        <translation>OMITIDO: %1</translation>
    </message>
    <message>
        <source>Local authority</source>
        <translation>Autoridad local</translation>
    </message>
    <message>
        <source>Signed</source>
        <translation>Firmado</translation>
    </message>
    <message numerus="yes">
        <source>%n missed before it</source>
        <translation>
            <numerusform>%n omitido antes</numerusform>
            <numerusform>%n omitidos antes</numerusform>
        </translation>
    </message>
    <message>
        <source>last %1 at %2</source>
        <translation>última %1 a las %2</translation>
    </message>
    <message>
        <source>to discard</source>
        <translation>para desechar</translation>
    </message>
    <message>
        <source>to put it right</source>
        <translation>para corregirlo</translation>
    </message>
    <message>
        <source>to be at %1</source>
        <translation>para estar a %1</translation>
    </message>
    <message>
        <source>to the last moment to measure</source>
        <translation>hasta el último momento para medir</translation>
    </message>
    <message>
        <source>taken back at once; does not count</source>
        <translation>retirado enseguida; no cuenta</translation>
    </message>
    <message>
        <source>corrects an earlier entry: %1</source>
        <translation>corrige una anotación anterior: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n due</source>
        <translation>
            <numerusform>%n pendiente</numerusform>
            <numerusform>%n pendientes</numerusform>
        </translation>
    </message>
    <message>
        <source>next at %1</source>
        <translation>siguiente a las %1</translation>
    </message>
    <message>
        <source>%1 of %2 done</source>
        <translation>%1 de %2 hechos</translation>
    </message>
    <message numerus="yes">
        <source>Out of limit, nothing said yet: %n</source>
        <translation>
            <numerusform>Fuera de límite, sin respuesta: %n</numerusform>
            <numerusform>Fuera de límite, sin respuesta: %n</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>cinder::face::FoodWords</name>
    <message>
        <source>%1 or above</source>
        <translation>%1 o más</translation>
    </message>
    <message>
        <source>%1 or below</source>
        <translation>%1 o menos</translation>
    </message>
    <message>
        <source>%1, local rule</source>
        <translation>%1, regla local</translation>
    </message>
    <message>
        <source>%1, pan %2</source>
        <translation>%1, charola %2</translation>
    </message>
    <message>
        <source>Pan %1</source>
        <translation>Charola %1</translation>
    </message>
    <message>
        <source>Whole dish</source>
        <translation>Plato entero</translation>
    </message>
    <message>
        <source>Probe %1</source>
        <translation>Sonda %1</translation>
    </message>
    <message>
        <source>On arrival</source>
        <translation>Al llegar</translation>
    </message>
    <message>
        <source>Off the heat</source>
        <translation>Al salir del calor</translation>
    </message>
    <message>
        <source>While held</source>
        <translation>En espera</translation>
    </message>
    <message>
        <source>Before service</source>
        <translation>Antes del servicio</translation>
    </message>
    <message>
        <source>During service</source>
        <translation>Durante el servicio</translation>
    </message>
    <message>
        <source>At strike</source>
        <translation>Al recoger</translation>
    </message>
    <message>
        <source>Arrived cold</source>
        <translation>Llegó frío</translation>
    </message>
    <message>
        <source>Arrived hot</source>
        <translation>Llegó caliente</translation>
    </message>
    <message>
        <source>Cooked through</source>
        <translation>Bien cocido</translation>
    </message>
    <message>
        <source>Reheated</source>
        <translation>Recalentado</translation>
    </message>
    <message>
        <source>Heated from a sealed pack</source>
        <translation>Calentado de paquete sellado</translation>
    </message>
    <message>
        <source>Held hot</source>
        <translation>Mantenido caliente</translation>
    </message>
    <message>
        <source>Held cold</source>
        <translation>Mantenido frío</translation>
    </message>
    <message>
        <source>Cooling</source>
        <translation>Enfriando</translation>
    </message>
    <message>
        <source>Cook on, then measure again</source>
        <translation>Seguir cociendo y medir otra vez</translation>
    </message>
    <message>
        <source>Reheat, then measure again</source>
        <translation>Recalentar y medir otra vez</translation>
    </message>
    <message>
        <source>Chill, then measure again</source>
        <translation>Enfriar y medir otra vez</translation>
    </message>
    <message>
        <source>Discard it</source>
        <translation>Desecharlo</translation>
    </message>
    <message>
        <source>From hot holding, 4 h</source>
        <translation>De la espera caliente, 4 h</translation>
    </message>
    <message>
        <source>From cold holding, 4 h</source>
        <translation>De la espera fría, 4 h</translation>
    </message>
    <message>
        <source>Freshly cut or opened, 4 h</source>
        <translation>Recién cortado o abierto, 4 h</translation>
    </message>
    <message>
        <source>From cold holding, 6 h, measured all along</source>
        <translation>De la espera fría, 6 h, midiendo siempre</translation>
    </message>
    <message>
        <source>Keep it cold</source>
        <translation>Guardarlo frío</translation>
    </message>
    <message>
        <source>Cool it, then keep it</source>
        <translation>Enfriarlo y guardarlo</translation>
    </message>
    <message>
        <source>not measured for too long</source>
        <translation>demasiado tiempo sin medir</translation>
    </message>
    <message>
        <source>out of limit for too long</source>
        <translation>demasiado tiempo fuera de límite</translation>
    </message>
    <message>
        <source>its time is over</source>
        <translation>se acabó su tiempo</translation>
    </message>
    <message>
        <source>too warm for its time control</source>
        <translation>demasiado tibio para su control de tiempo</translation>
    </message>
    <message>
        <source>it did not cool in time</source>
        <translation>no se enfrió a tiempo</translation>
    </message>
    <message>
        <source>nothing shows that it was cooked</source>
        <translation>nada muestra que se coció</translation>
    </message>
    <message>
        <source>nothing shows how it cooled</source>
        <translation>nada muestra cómo se enfrió</translation>
    </message>
    <message>
        <source>nothing shows how it was reheated</source>
        <translation>nada muestra cómo se recalentó</translation>
    </message>
    <message>
        <source>Extinguisher at hand, charged, and water for the coals</source>
        <translation>Extintor a mano, cargado, y agua para las brasas</translation>
    </message>
    <message>
        <source>Clear ground: 3 m (10 ft) from anything that burns</source>
        <translation>Terreno despejado: a 3 m (10 ft) de todo lo que arde</translation>
    </message>
    <message>
        <source>Open air: no tent, roof or vehicle around the fire</source>
        <translation>Aire libre: sin carpa, techo ni vehículo alrededor del fuego</translation>
    </message>
    <message>
        <source>Discarded</source>
        <translation>Desechado</translation>
    </message>
    <message>
        <source>Discard: %1, since %2</source>
        <translation>Desechar: %1, desde las %2</translation>
    </message>
    <message>
        <source>Out of limit: say what is done</source>
        <translation>Fuera de límite: diga qué se hace</translation>
    </message>
    <message>
        <source>%1 until %2</source>
        <translation>%1 hasta las %2</translation>
    </message>
    <message>
        <source>Time control: discard at %1</source>
        <translation>Control de tiempo: desechar a las %1</translation>
    </message>
    <message>
        <source>Cooling: next reading by %1</source>
        <translation>Enfriando: siguiente lectura antes de las %1</translation>
    </message>
    <message>
        <source>Hot, in control</source>
        <translation>Caliente, bajo control</translation>
    </message>
    <message>
        <source>Cold, in control</source>
        <translation>Frío, bajo control</translation>
    </message>
    <message>
        <source>Nothing on record yet</source>
        <translation>Aún sin registro</translation>
    </message>
    <message>
        <source>%1, at most %2 off</source>
        <translation>%1, con %2 de error como máximo</translation>
    </message>
    <message>
        <source>ice point passed at %1</source>
        <translation>punto de hielo correcto a las %1</translation>
    </message>
    <message>
        <source>ice point FAILED at %1</source>
        <translation>punto de hielo FALLÓ a las %1</translation>
    </message>
    <message>
        <source>not tested today</source>
        <translation>sin probar hoy</translation>
    </message>
    <message>
        <source>to %1 within %2, to %3 within %4</source>
        <translation>a %1 en %2, a %3 en %4</translation>
    </message>
    <message>
        <source>has probably fallen to %1: measure now</source>
        <translation>probablemente ya bajó a %1: mida ahora</translation>
    </message>
    <message>
        <source>reaches %1 in about %2, at the earliest %3: measure before</source>
        <translation>llega a %1 en unos %2, lo más pronto a las %3: mida antes</translation>
    </message>
</context>
<context>
    <name>cinder::face::NumberEntry</name>
    <message>
        <source>At least %1</source>
        <translation>Como mínimo %1</translation>
    </message>
    <message>
        <source>At most %1</source>
        <translation>Como máximo %1</translation>
    </message>
</context>
<context>
    <name>cinder::face::Promise</name>
    <message>
        <source>serve at %1</source>
        <translation>servir a las %1</translation>
    </message>
    <message>
        <source>arrive at %1</source>
        <translation>llegar a las %1</translation>
    </message>
    <message>
        <source>It can be done.</source>
        <translation>Se puede.</translation>
    </message>
    <message>
        <source>It can be done, with %1 to spare.</source>
        <translation>Se puede, y sobran %1.</translation>
    </message>
    <message>
        <source>Not like this: %1 too short.</source>
        <translation>Así no: faltan %1.</translation>
    </message>
    <message>
        <source>The crew may come as late as %1.</source>
        <translation>El equipo puede llegar hasta las %1.</translation>
    </message>
    <message>
        <source>Proven: no plan lets them come later.</source>
        <translation>Demostrado: ningún plan permite llegar más tarde.</translation>
    </message>
    <message>
        <source>No plan lets them come more than %1 later.</source>
        <translation>Ningún plan permite llegar más de %1 después.</translation>
    </message>
    <message>
        <source>Weakest link: %1, %2 of slack.</source>
        <translation>Punto más débil: %1, %2 de holgura.</translation>
    </message>
    <message>
        <source>Come %1 earlier</source>
        <translation>Llegar %1 antes</translation>
    </message>
    <message>
        <source>, at %1</source>
        <translation>, a las %1</translation>
    </message>
    <message>
        <source>Serve %1 later, at %2</source>
        <translation>Servir %1 más tarde, a las %2</translation>
    </message>
    <message>
        <source>Prepare before leaving: %1</source>
        <translation>Preparar antes de salir: %1</translation>
    </message>
    <message>
        <source>Leave out: %1</source>
        <translation>Omitir: %1</translation>
    </message>
    <message>
        <source>%1 more of: %2</source>
        <translation>%1 más de: %2</translation>
    </message>
    <message>
        <source>One person more: %1</source>
        <translation>Una persona más: %1</translation>
    </message>
    <message>
        <source>enough; gains %1</source>
        <translation>basta; gana %1</translation>
    </message>
    <message>
        <source>not enough alone; gains %1</source>
        <translation>no basta por sí solo; gana %1</translation>
    </message>
    <message>
        <source>1 guest</source>
        <translation>1 invitado</translation>
    </message>
    <message>
        <source>%1 guests</source>
        <translation>%1 invitados</translation>
    </message>
</context>
<context>
    <name>cinder::face::RowMaker</name>
    <message>
        <source>until start</source>
        <translation>para empezar</translation>
    </message>
    <message>
        <source>to turn %1</source>
        <translation>para voltear %1</translation>
    </message>
    <message>
        <source>to pull</source>
        <translation>para sacar</translation>
    </message>
    <message>
        <source>of rest</source>
        <translation>de reposo</translation>
    </message>
    <message>
        <source>to go</source>
        <translation>restante</translation>
    </message>
    <message>
        <source>pull</source>
        <translation>sacar</translation>
    </message>
    <message>
        <source>time is up</source>
        <translation>se acabó el tiempo</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>late to begin</source>
        <translation>tarde para empezar</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Finished</source>
        <translation>Terminado</translation>
    </message>
    <message>
        <source>Free hands</source>
        <translation>Manos libres</translation>
    </message>
    <message>
        <source>Turned</source>
        <translation>Volteado</translation>
    </message>
    <message>
        <source>Pulled</source>
        <translation>Sacado</translation>
    </message>
</context>
<context>
    <name>cinder::face::Serve</name>
    <message>
        <source>of %1 guests</source>
        <translation>de %1 invitados</translation>
    </message>
    <message>
        <source>First guest</source>
        <translation>Primer invitado</translation>
    </message>
    <message>
        <source>All through at %1</source>
        <translation>Todos pasaron a las %1</translation>
    </message>
    <message>
        <source>All through about %1</source>
        <translation>Todos pasan hacia las %1</translation>
    </message>
    <message>
        <source>four times of five between %1 and %2</source>
        <translation>cuatro de cada cinco veces entre las %1 y las %2</translation>
    </message>
    <message>
        <source>about %1 waiting</source>
        <translation>unos %1 en la fila</translation>
    </message>
    <message>
        <source>%1 s a guest</source>
        <translation>%1 s por invitado</translation>
    </message>
    <message>
        <source>What holds them up: %1</source>
        <translation>Lo que los frena: %1</translation>
    </message>
    <message>
        <source>pan %1 of %2</source>
        <translation>charola %1 de %2</translation>
    </message>
    <message>
        <source>about %1 % left</source>
        <translation>queda un %1 %</translation>
    </message>
    <message>
        <source>empty about %1</source>
        <translation>vacía hacia las %1</translation>
    </message>
    <message>
        <source>lasts; %1 portions for seconds</source>
        <translation>alcanza; %1 porciones para repetir</translation>
    </message>
    <message>
        <source>Start the next pan now</source>
        <translation>Prepara ya la siguiente charola</translation>
    </message>
    <message>
        <source>Start the next pan by %1</source>
        <translation>Prepara la siguiente charola a más tardar a las %1</translation>
    </message>
    <message>
        <source>Runs short: %1 portions left for %2. Serve %3 % of a portion.</source>
        <translation>No alcanza: quedan %1 porciones para %2. Sirve el %3 % de la porción.</translation>
    </message>
</context>
<context>
    <name>cinder::face::Words</name>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation>%1 h %2 min</translation>
    </message>
    <message>
        <source>ready on the minute</source>
        <translation>listo justo a la hora</translation>
    </message>
    <message>
        <source>%1 late</source>
        <translation>%1 tarde</translation>
    </message>
    <message>
        <source>%1 spare</source>
        <translation>%1 de margen</translation>
    </message>
    <message>
        <source>%1 too late</source>
        <translation>%1 de retraso</translation>
    </message>
    <message>
        <source>no slack</source>
        <translation>sin holgura</translation>
    </message>
    <message>
        <source>%1 slack</source>
        <translation>%1 de holgura</translation>
    </message>
    <message>
        <source>batch %1 of %2</source>
        <translation>tanda %1 de %2</translation>
    </message>
    <message>
        <source>Waits</source>
        <translation>Espera</translation>
    </message>
    <message>
        <source>Late to begin</source>
        <translation>Tarde para empezar</translation>
    </message>
    <message>
        <source>May begin</source>
        <translation>Puede empezar</translation>
    </message>
    <message>
        <source>Running late</source>
        <translation>En curso, tarde</translation>
    </message>
    <message>
        <source>Running</source>
        <translation>En curso</translation>
    </message>
    <message>
        <source>Time is up</source>
        <translation>Se acabó el tiempo</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Omitido</translation>
    </message>
    <message>
        <source>Light it</source>
        <translation>Encender</translation>
    </message>
    <message>
        <source>Put on</source>
        <translation>A la parrilla</translation>
    </message>
    <message>
        <source>Let rest</source>
        <translation>Reposar</translation>
    </message>
    <message>
        <source>Open the line</source>
        <translation>Abrir la línea</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Empezar</translation>
    </message>
    <message>
        <source>Coals are ready</source>
        <translation>Brasas listas</translation>
    </message>
    <message>
        <source>Pull</source>
        <translation>Sacar</translation>
    </message>
    <message>
        <source>Rested</source>
        <translation>Reposado</translation>
    </message>
    <message>
        <source>Close the line</source>
        <translation>Cerrar la línea</translation>
    </message>
    <message numerus="yes">
        <source>All %n turn(s) done</source>
        <translation>
            <numerusform>%n vuelta hecha</numerusform>
            <numerusform>Las %n vueltas hechas</numerusform>
        </translation>
    </message>
    <message>
        <source>Turn %1 of %2</source>
        <translation>Vuelta %1 de %2</translation>
    </message>
    <message>
        <source>Turn now</source>
        <translation>Voltear ya</translation>
    </message>
    <message>
        <source>Look and pull</source>
        <translation>Mirar y sacar</translation>
    </message>
    <message>
        <source>Begin now</source>
        <translation>Empezar ya</translation>
    </message>
    <message>
        <source>Take the temperature</source>
        <translation>Tomar la temperatura</translation>
    </message>
    <message>
        <source>Begun: %1</source>
        <translation>Empezado: %1</translation>
    </message>
    <message>
        <source>Done: %1</source>
        <translation>Hecho: %1</translation>
    </message>
    <message>
        <source>Left out: %1</source>
        <translation>Omitido: %1</translation>
    </message>
    <message>
        <source>Ticked: %1</source>
        <translation>Marcado: %1</translation>
    </message>
    <message>
        <source>Turn %1 noted: %2</source>
        <translation>Vuelta %1 anotada: %2</translation>
    </message>
    <message>
        <source>Temperature noted: %1</source>
        <translation>Temperatura anotada: %1</translation>
    </message>
    <message>
        <source>Laid on the grate: %1</source>
        <translation>Puesto en la parrilla: %1</translation>
    </message>
    <message>
        <source>The fire was tested</source>
        <translation>Se probó el fuego</translation>
    </message>
    <message>
        <source>Temperature of piece %1 noted: %2</source>
        <translation>Temperatura de la pieza %1 anotada: %2</translation>
    </message>
    <message>
        <source>Piece %1 judged: %2</source>
        <translation>Pieza %1 valorada: %2</translation>
    </message>
    <message>
        <source>Pulled: %1</source>
        <translation>Retirado: %1</translation>
    </message>
    <message>
        <source>Moved on the grate: %1</source>
        <translation>Movido en la parrilla: %1</translation>
    </message>
    <message>
        <source>Coal was added</source>
        <translation>Se añadió carbón</translation>
    </message>
    <message>
        <source>Written in the record</source>
        <translation>Anotado en el registro</translation>
    </message>
    <message>
        <source>The bell was moved</source>
        <translation>La campana se movió</translation>
    </message>
    <message>
        <source>Call silenced: %1</source>
        <translation>Aviso silenciado: %1</translation>
    </message>
    <message>
        <source>Taken back</source>
        <translation>Deshecho</translation>
    </message>
    <message>
        <source>This device&apos;s clock was set by %1. Timers follow the new time; compare it with a watch.</source>
        <translation>El reloj de este aparato cambió %1. Los avisos siguen la nueva hora; compárela con un reloj.</translation>
    </message>
    <message>
        <source>The journal cannot be written. Nothing is lost, nothing new is kept.</source>
        <translation>No se puede escribir el diario. Nada se pierde, nada nuevo se guarda.</translation>
    </message>
    <message>
        <source>The last touch could not be saved: the device is full. Free some space.</source>
        <translation>El último toque no se guardó: el aparato está lleno. Libere espacio.</translation>
    </message>
    <message>
        <source>%1 will wait %2 longer than it may.</source>
        <translation>%1 esperará %2 más de lo permitido.</translation>
    </message>
    <message>
        <source>A task</source>
        <translation>Una tarea</translation>
    </message>
    <message>
        <source>Made by a newer Cinderbell: shown, not changed.</source>
        <translation>Hecho con un Cinderbell más nuevo: se muestra, no se cambia.</translation>
    </message>
    <message>
        <source>No event is open. Open one first.</source>
        <translation>No hay evento abierto. Abra uno primero.</translation>
    </message>
    <message>
        <source>The plan has changed; that task is no longer on it.</source>
        <translation>El plan cambió; esa tarea ya no está.</translation>
    </message>
    <message>
        <source>That is not open just now; nothing was noted.</source>
        <translation>Eso no se puede ahora; nada se anotó.</translation>
    </message>
    <message>
        <source>This event can be looked at, not changed.</source>
        <translation>Este evento se puede ver, no cambiar.</translation>
    </message>
    <message>
        <source>Not saved: the device is full or its storage failed. Free some space and touch again.</source>
        <translation>No guardado: el aparato está lleno o falló. Libere espacio y toque otra vez.</translation>
    </message>
    <message>
        <source>The event file cannot be used: %1</source>
        <translation>El archivo del evento no sirve: %1</translation>
    </message>
    <message>
        <source>No plan keeps this promise: %1</source>
        <translation>Ningún plan cumple la promesa: %1</translation>
    </message>
    <message>
        <source>Figure changed</source>
        <translation>Cifra cambiada</translation>
    </message>
    <message>
        <source>Guests changed</source>
        <translation>Personas cambiadas</translation>
    </message>
    <message>
        <source>Line rearranged</source>
        <translation>Línea reordenada</translation>
    </message>
    <message>
        <source>Counted in the van</source>
        <translation>Contado en la camioneta</translation>
    </message>
    <message>
        <source>Placed on the line</source>
        <translation>Puesto en la línea</translation>
    </message>
    <message>
        <source>The first guest steps up</source>
        <translation>Llega el primer invitado</translation>
    </message>
    <message>
        <source>%1 guests are through</source>
        <translation>Ya pasaron %1 invitados</translation>
    </message>
    <message>
        <source>The last guest is through</source>
        <translation>Ya pasó el último invitado</translation>
    </message>
    <message>
        <source>Level noted: %1 % left</source>
        <translation>Nivel anotado: queda el %1 %</translation>
    </message>
    <message>
        <source>Pan %1 is on the line</source>
        <translation>La charola %1 está en la línea</translation>
    </message>
</context>
</TS>
