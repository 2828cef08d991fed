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
</context>
</TS>
