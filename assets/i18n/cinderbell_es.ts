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
        <source>now %1</source>
        <translation>ahora %1</translation>
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
        <source>%1 ago</source>
        <translation>hace %1</translation>
    </message>
    <message>
        <source>Heard</source>
        <translation>Oído</translation>
    </message>
</context>
<context>
    <name>CautionPage</name>
    <message>
        <source>Cautions</source>
        <translation>Precauciones</translation>
    </message>
</context>
<context>
    <name>Cautions</name>
    <message>
        <source>Local fire and health codes and licensed practice decide.</source>
        <translation>Deciden las normas locales contra incendios y de sanidad y la práctica autorizada.</translation>
    </message>
</context>
<context>
    <name>ChanceRow</name>
    <message>
        <source>chance that all is out by the bell</source>
        <translation>probabilidad de tener todo servido a la campana</translation>
    </message>
</context>
<context>
    <name>CheckColumn</name>
    <message>
        <source>To measure</source>
        <translation>Por medir</translation>
    </message>
</context>
<context>
    <name>ClosingColumn</name>
    <message>
        <source>Signature of the person in charge</source>
        <translation>Firma de la persona a cargo</translation>
    </message>
    <message>
        <source>Hold: sign as %1</source>
        <translation>Mantenga pulsado: firmar como %1</translation>
    </message>
    <message>
        <source>Verify that no entry was changed</source>
        <translation>Comprobar que ninguna anotación cambió</translation>
    </message>
    <message>
        <source>Limits in force; touch one that is stricter here</source>
        <translation>Límites vigentes; toque el que aquí es más estricto</translation>
    </message>
</context>
<context>
    <name>CodeEntry</name>
    <message>
        <source>Code</source>
        <translation>Código</translation>
    </message>
</context>
<context>
    <name>CopyPlate</name>
    <message>
        <source>Take back</source>
        <translation>Recuperar</translation>
    </message>
    <message>
        <source>Take back what is missing here from %1</source>
        <translation>Recuperar de %1 lo que falta aquí</translation>
    </message>
</context>
<context>
    <name>CrewDevicesPage</name>
    <message>
        <source>Devices</source>
        <translation>Aparatos</translation>
    </message>
    <message>
        <source>What one ticks, all see: over one Wi-Fi or a phone&apos;s hotspot, without the internet.</source>
        <translation>Lo que uno marca lo ven todos: por una misma red wifi o por el punto de acceso de un teléfono, sin internet.</translation>
    </message>
    <message>
        <source>Show a code</source>
        <translation>Mostrar código</translation>
    </message>
    <message>
        <source>On the first device of the crew</source>
        <translation>En el primer aparato de la cuadrilla</translation>
    </message>
    <message>
        <source>Enter a code</source>
        <translation>Ingresar código</translation>
    </message>
    <message>
        <source>On every other one</source>
        <translation>En cada uno de los demás</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Código</translation>
    </message>
    <message>
        <source>Joined so far</source>
        <translation>Ya unidos</translation>
    </message>
    <message>
        <source>Joined so far: none</source>
        <translation>Ya unidos: ninguno</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <source>Show the code again</source>
        <translation>Mostrar otra vez el código</translation>
    </message>
    <message>
        <source>Hold: leave the other devices</source>
        <translation>Mantenga pulsado: dejar los demás aparatos</translation>
    </message>
    <message>
        <source>What came from them stays on this device.</source>
        <translation>Lo que llegó de ellos se queda en este aparato.</translation>
    </message>
</context>
<context>
    <name>CrewPage</name>
    <message>
        <source>Crew</source>
        <translation>Cuadrilla</translation>
    </message>
    <message>
        <source>Who is there now</source>
        <translation>Quién está ahora</translation>
    </message>
    <message>
        <source>Somebody goes, comes, or takes over other work: say so here, then plan the rest.</source>
        <translation>Alguien se va, llega o se encarga de otra cosa: dígalo aquí y planee lo que queda.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Somebody comes</source>
        <translation>Llega alguien</translation>
    </message>
    <message>
        <source>As planned: nothing is changed.</source>
        <translation>Como estaba planeado: nada cambia.</translation>
    </message>
    <message>
        <source>Planning…</source>
        <translation>Planeando…</translation>
    </message>
    <message>
        <source>Plan the rest for them</source>
        <translation>Planear lo que queda</translation>
    </message>
    <message>
        <source>Hold to stop</source>
        <translation>Mantenga pulsado para parar</translation>
    </message>
</context>
<context>
    <name>CrewPlate</name>
    <message>
        <source>Without a name</source>
        <translation>Sin nombre</translation>
    </message>
    <message>
        <source>Name: %1</source>
        <translation>Nombre: %1</translation>
    </message>
    <message>
        <source>There</source>
        <translation>Está</translation>
    </message>
    <message>
        <source>%1 is there</source>
        <translation>%1 está</translation>
    </message>
    <message>
        <source>Gone</source>
        <translation>Se fue</translation>
    </message>
    <message>
        <source>%1 is gone</source>
        <translation>%1 se fue</translation>
    </message>
    <message>
        <source>Take off the list: %1</source>
        <translation>Quitar de la lista: %1</translation>
    </message>
</context>
<context>
    <name>DayTouches</name>
    <message>
        <source>Move the bell</source>
        <translation>Mover la campana</translation>
    </message>
    <message>
        <source>Plan again</source>
        <translation>Replanificar</translation>
    </message>
    <message>
        <source>Planning…</source>
        <translation>Planeando…</translation>
    </message>
</context>
<context>
    <name>DebriefPage</name>
    <message>
        <source>Debrief</source>
        <translation>Repaso</translation>
    </message>
    <message>
        <source>Planned and actual</source>
        <translation>Lo planeado y lo real</translation>
    </message>
    <message>
        <source>For the next event made from this one</source>
        <translation>Para el próximo evento hecho de este</translation>
    </message>
</context>
<context>
    <name>EntryLine</name>
    <message>
        <source>Amend</source>
        <translation>Corregir</translation>
    </message>
    <message>
        <source>Amend %1</source>
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
    <message>
        <source>Being written</source>
        <translation>En preparación</translation>
    </message>
    <message>
        <source>Planning…</source>
        <translation>Planeando…</translation>
    </message>
</context>
<context>
    <name>FieldNumberSheet</name>
    <message>
        <source>Take it</source>
        <translation>Guardar</translation>
    </message>
</context>
<context>
    <name>FigureView</name>
    <message>
        <source>Use your own figure</source>
        <translation>Usar su propia cifra</translation>
    </message>
    <message>
        <source>Back to reckoned</source>
        <translation>Volver a lo calculado</translation>
    </message>
    <message>
        <source>What went into it</source>
        <translation>De qué se compone</translation>
    </message>
</context>
<context>
    <name>FireBatchPlate</name>
    <message>
        <source>How warm was it inside?</source>
        <translation>¿Qué temperatura tenía por dentro?</translation>
    </message>
    <message>
        <source>Pull several</source>
        <translation>Sacar varias</translation>
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
    <message>
        <source>To measure soon</source>
        <translation>Por medir pronto</translation>
    </message>
</context>
<context>
    <name>FirePadSheet</name>
    <message>
        <source>Note it</source>
        <translation>Anotar</translation>
    </message>
</context>
<context>
    <name>FireQuestions</name>
    <message>
        <source>Before the fire is lit</source>
        <translation>Antes de encender el fuego</translation>
    </message>
    <message>
        <source>Skipped on record: %1</source>
        <translation>Omitido en el registro: %1</translation>
    </message>
    <message>
        <source>Hold: skip, on record</source>
        <translation>Mantenga pulsado: omitir y dejar registro</translation>
    </message>
</context>
<context>
    <name>FoodChoices</name>
    <message>
        <source>Or in words of your own</source>
        <translation>O con sus propias palabras</translation>
    </message>
    <message>
        <source>Write down</source>
        <translation>Anotar</translation>
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
        <translation>Fue un descuido: anularlo (%1)</translation>
    </message>
</context>
<context>
    <name>Foot</name>
    <message>
        <source>Heard</source>
        <translation>Oído</translation>
    </message>
</context>
<context>
    <name>GratePlate</name>
    <message>
        <source>Cool side</source>
        <translation>Lado frío</translation>
    </message>
    <message>
        <source>over the coals</source>
        <translation>sobre las brasas</translation>
    </message>
    <message>
        <source>due</source>
        <translation>por sacar</translation>
    </message>
    <message>
        <source>on the cool side</source>
        <translation>en el lado frío</translation>
    </message>
    <message>
        <source>pulled</source>
        <translation>sacada</translation>
    </message>
    <message>
        <source>Hand test</source>
        <translation>Prueba de la mano</translation>
    </message>
    <message>
        <source>Coal added</source>
        <translation>Carbón agregado</translation>
    </message>
</context>
<context>
    <name>GuestStrip</name>
    <message>
        <source>5 adults fewer</source>
        <translation>5 adultos menos</translation>
    </message>
    <message>
        <source>5 adults more</source>
        <translation>5 adultos más</translation>
    </message>
    <message>
        <source>1 child fewer</source>
        <translation>1 niño menos</translation>
    </message>
    <message>
        <source>1 child more</source>
        <translation>1 niño más</translation>
    </message>
    <message>
        <source>So many come</source>
        <translation>Vienen tantos</translation>
    </message>
    <message>
        <source>Leave as agreed</source>
        <translation>Dejar lo acordado</translation>
    </message>
    <message>
        <source>Planning…</source>
        <translation>Planeando…</translation>
    </message>
</context>
<context>
    <name>HoldPlate</name>
    <message>
        <source>Once more to do it</source>
        <translation>Pulse una vez más para hacerlo</translation>
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
        <translation>La campana, la cuadrilla, el punto más débil</translation>
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
        <source>Unit: %1</source>
        <translation>Unidad: %1</translation>
    </message>
</context>
<context>
    <name>KitchenPage</name>
    <message>
        <source>Kitchen</source>
        <translation>Cocina</translation>
    </message>
    <message>
        <source>Nothing is cooked ahead.</source>
        <translation>No se cocina nada por adelantado.</translation>
    </message>
    <message>
        <source>A thermometer decides what is cold or hot enough. Local codes and the licensed food protection manager decide.</source>
        <translation>El termómetro decide qué está lo bastante frío o caliente. Deciden los códigos locales y el responsable certificado de inocuidad.</translation>
    </message>
</context>
<context>
    <name>LateNow</name>
    <message>
        <source>As the day runs now</source>
        <translation>Tal como va el día</translation>
    </message>
    <message>
        <source>Weakest link: %1, %2</source>
        <translation>Punto más débil: %1, %2</translation>
    </message>
    <message>
        <source>What would help from now on</source>
        <translation>Qué ayudaría desde ahora</translation>
    </message>
    <message>
        <source>Reckoning: every answer is planned, not guessed …</source>
        <translation>Calculando: cada respuesta se planifica, no se adivina …</translation>
    </message>
    <message>
        <source>No single change was found that helps. Move the bell, and tell the client early.</source>
        <translation>No se halló ningún cambio que ayude por sí solo. Mueva la campana y avise pronto al cliente.</translation>
    </message>
    <message>
        <source>The bell is moved on the lead board; a single step is left out on the Fire or Buffet board.</source>
        <translation>La campana se mueve en el tablero del jefe; un solo paso se omite en el tablero Fuego o Bufé.</translation>
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
        <translation>Cuadrilla</translation>
    </message>
    <message>
        <source>Coming up</source>
        <translation>A continuación</translation>
    </message>
    <message>
        <source>After the bell</source>
        <translation>Después de la campana</translation>
    </message>
    <message>
        <source>Serve</source>
        <translation>Servir</translation>
    </message>
    <message>
        <source>Strike</source>
        <translation>Recoger</translation>
    </message>
    <message>
        <source>Debrief</source>
        <translation>Repaso</translation>
    </message>
</context>
<context>
    <name>LessonPlate</name>
    <message>
        <source>Take it along</source>
        <translation>Llevarlo</translation>
    </message>
    <message>
        <source>Take it along: %1</source>
        <translation>Llevarlo: %1</translation>
    </message>
    <message>
        <source>Leave as planned</source>
        <translation>Dejar como estaba</translation>
    </message>
    <message>
        <source>Leave as planned: %1</source>
        <translation>Dejar como estaba: %1</translation>
    </message>
</context>
<context>
    <name>LinePage</name>
    <message>
        <source>Buffet line</source>
        <translation>Línea del bufé</translation>
    </message>
    <message>
        <source>Plates at the left, guests below.</source>
        <translation>Platos a la izquierda, invitados abajo.</translation>
    </message>
    <message>
        <source>In serving order</source>
        <translation>En orden de servicio</translation>
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
        <source>How much is left?</source>
        <translation>¿Cuánto queda?</translation>
    </message>
    <message>
        <source>The last pan is empty</source>
        <translation>La última charola está vacía</translation>
    </message>
    <message>
        <source>%1: the last pan is empty</source>
        <translation>%1: la última charola está vacía</translation>
    </message>
    <message>
        <source>%1: a fresh pan is on the line</source>
        <translation>%1: ya hay charola llena en la línea</translation>
    </message>
</context>
<context>
    <name>ListsPage</name>
    <message>
        <source>Lists</source>
        <translation>Listas</translation>
    </message>
    <message>
        <source>Quantities</source>
        <translation>Cantidades</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Carga</translation>
    </message>
    <message>
        <source>Kitchen</source>
        <translation>Cocina</translation>
    </message>
    <message>
        <source>Buffet line</source>
        <translation>Línea del bufé</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papel</translation>
    </message>
</context>
<context>
    <name>LoadPage</name>
    <message>
        <source>Load</source>
        <translation>Carga</translation>
    </message>
    <message>
        <source>Which way</source>
        <translation>En qué sentido</translation>
    </message>
    <message>
        <source>Into the van</source>
        <translation>A la camioneta</translation>
    </message>
    <message>
        <source>On the way home</source>
        <translation>De regreso</translation>
    </message>
    <message>
        <source>Raw food rides apart from ready food, fuel and charcoal apart from all food. Never load warm coals.</source>
        <translation>Lo crudo viaja aparte de lo listo; combustible y carbón, aparte de toda comida. Nunca cargue brasas tibias.</translation>
    </message>
</context>
<context>
    <name>LoadTile</name>
    <message>
        <source>Count: %1, %2</source>
        <translation>Contar: %1, %2</translation>
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
    <name>MakeLine</name>
    <message>
        <source>Type it</source>
        <translation>Escribir</translation>
    </message>
</context>
<context>
    <name>MakeNumber</name>
    <message>
        <source>Less: %1</source>
        <translation>Menos: %1</translation>
    </message>
    <message>
        <source>More: %1</source>
        <translation>Más: %1</translation>
    </message>
</context>
<context>
    <name>MakeOptions</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>MakePage</name>
    <message>
        <source>Edit the event</source>
        <translation>Editar el evento</translation>
    </message>
    <message>
        <source>One page back</source>
        <translation>Una página atrás</translation>
    </message>
    <message>
        <source>Leave the editor</source>
        <translation>Salir del editor</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Undo the last change</source>
        <translation>Deshacer el último cambio</translation>
    </message>
    <message>
        <source>Plan it</source>
        <translation>Planear</translation>
    </message>
    <message>
        <source>Planning…</source>
        <translation>Planeando…</translation>
    </message>
</context>
<context>
    <name>MakeParts</name>
    <message>
        <source>Parts of the event</source>
        <translation>Partes del evento</translation>
    </message>
    <message>
        <source>Write it to a file</source>
        <translation>Escribirlo en un archivo</translation>
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
        <source>Edit the event</source>
        <translation>Editar el evento</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Precauciones</translation>
    </message>
    <message>
        <source>Lists</source>
        <translation>Listas</translation>
    </message>
    <message>
        <source>Serve</source>
        <translation>Servir</translation>
    </message>
    <message>
        <source>Strike</source>
        <translation>Recoger</translation>
    </message>
    <message>
        <source>Debrief</source>
        <translation>Repaso</translation>
    </message>
    <message>
        <source>Crew</source>
        <translation>Cuadrilla</translation>
    </message>
    <message>
        <source>Who holds this device?</source>
        <translation>¿Quién lleva este aparato?</translation>
    </message>
    <message>
        <source>Devices</source>
        <translation>Aparatos</translation>
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
    <name>NewPage</name>
    <message>
        <source>New event</source>
        <translation>Evento nuevo</translation>
    </message>
    <message>
        <source>Back to all events</source>
        <translation>Volver a los eventos</translation>
    </message>
    <message>
        <source>What is it like? Everything can be changed afterwards.</source>
        <translation>¿A cuál se parece? Todo se puede cambiar después.</translation>
    </message>
</context>
<context>
    <name>NumberSheet</name>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
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
    <message>
        <source>Planning…</source>
        <translation>Planeando…</translation>
    </message>
    <message>
        <source>Hold: %1</source>
        <translation>Mantenga pulsado: %1</translation>
    </message>
    <message>
        <source>Hold to stop planning: %1</source>
        <translation>Mantenga pulsado para parar el plan: %1</translation>
    </message>
    <message>
        <source>Hold to stop</source>
        <translation>Mantenga pulsado para parar</translation>
    </message>
    <message>
        <source>Hold: leave out</source>
        <translation>Mantenga pulsado: omitir</translation>
    </message>
</context>
<context>
    <name>OrderPlate</name>
    <message>
        <source>Show %1</source>
        <translation>Mostrar %1</translation>
    </message>
    <message>
        <source>Drag %1</source>
        <translation>Arrastrar %1</translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation>Antes</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Después</translation>
    </message>
</context>
<context>
    <name>PageHead</name>
    <message>
        <source>Back</source>
        <translation>Volver</translation>
    </message>
</context>
<context>
    <name>PanShelf</name>
    <message>
        <source>Pans</source>
        <translation>Charolas</translation>
    </message>
</context>
<context>
    <name>PaperPage</name>
    <message>
        <source>Paper</source>
        <translation>Papel</translation>
    </message>
    <message>
        <source>Written as a file to print or to send.</source>
        <translation>Se escribe como archivo para imprimir o enviar.</translation>
    </message>
    <message>
        <source>Paper size</source>
        <translation>Tamaño de papel</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Write PDF</source>
        <translation>Escribir PDF</translation>
    </message>
    <message>
        <source>Write CSV</source>
        <translation>Escribir CSV</translation>
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
        <translation>Calientaplatos con agua y tapados</translation>
    </message>
    <message>
        <source>Signs in front of every dish</source>
        <translation>Letreros delante de cada plato</translation>
    </message>
    <message>
        <source>Held</source>
        <translation>Mantenido pulsado</translation>
    </message>
    <message>
        <source>Hold: hard to take back</source>
        <translation>Mantenga pulsado: difícil de deshacer</translation>
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
    <name>PieceTouches</name>
    <message>
        <source>Probe reading</source>
        <translation>Lectura de sonda</translation>
    </message>
    <message>
        <source>Looks done</source>
        <translation>Se ve lista</translation>
    </message>
    <message>
        <source>Not yet</source>
        <translation>Aún no</translation>
    </message>
    <message>
        <source>Piece before</source>
        <translation>Pieza anterior</translation>
    </message>
    <message>
        <source>Next piece</source>
        <translation>Pieza siguiente</translation>
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
    <message>
        <source>The guests in line, a forecast</source>
        <translation>Los invitados en la fila, un pronóstico</translation>
    </message>
    <message>
        <source>What would shorten the line</source>
        <translation>Qué acortaría la fila</translation>
    </message>
    <message>
        <source>As it was promised before the day</source>
        <translation>Como se prometió antes del día</translation>
    </message>
</context>
<context>
    <name>QuantitiesPage</name>
    <message>
        <source>Quantities</source>
        <translation>Cantidades</translation>
    </message>
    <message>
        <source>Touch a figure to see how it came about.</source>
        <translation>Toque una cifra para ver de dónde sale.</translation>
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
    <message>
        <source>Sign and limits</source>
        <translation>Firma y límites</translation>
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
    <name>ReviewKey</name>
    <message>
        <source>planned</source>
        <translation>planeado</translation>
    </message>
    <message>
        <source>actual</source>
        <translation>real</translation>
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
        <translation>Charolas en la línea, un pronóstico: toque lo que ve</translation>
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
        <translation>Deciden las normas locales contra incendios y de sanidad y la práctica autorizada.</translation>
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
    <message>
        <source>Weights and lengths</source>
        <translation>Pesos y medidas</translation>
    </message>
    <message>
        <source>lb and in</source>
        <translation>lb y pulgadas</translation>
    </message>
    <message>
        <source>kg and cm</source>
        <translation>kg y cm</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
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
    <message>
        <source>as it happens</source>
        <translation>tal como pasa</translation>
    </message>
    <message>
        <source>an hour in 6 min</source>
        <translation>una hora en 6 min</translation>
    </message>
    <message>
        <source>an hour in 2 min</source>
        <translation>una hora en 2 min</translation>
    </message>
    <message>
        <source>an hour in a minute</source>
        <translation>una hora en un minuto</translation>
    </message>
    <message>
        <source>an hour in 30 s</source>
        <translation>una hora en 30 s</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Volver</translation>
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
        <source>Local fire and health codes and licensed practice decide.</source>
        <translation>Deciden las normas locales contra incendios y de sanidad y la práctica autorizada.</translation>
    </message>
    <message>
        <source>Demo events</source>
        <translation>Eventos de demostración</translation>
    </message>
    <message>
        <source>New event</source>
        <translation>Evento nuevo</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Próximos</translation>
    </message>
    <message>
        <source>Past and rehearsed</source>
        <translation>Pasados y ensayados</translation>
    </message>
    <message>
        <source>A copy of everything</source>
        <translation>Una copia de todo</translation>
    </message>
    <message>
        <source>Keep a copy of everything</source>
        <translation>Guardar una copia de todo</translation>
    </message>
    <message>
        <source>Make your own event in about two minutes, or look at a day that is made: open it as it would be lived, or rehearse it sixty times as fast. A rehearsal keeps nothing of yours.</source>
        <translation>Haga su propio evento en unos dos minutos, o mire un día ya hecho: ábralo como se viviría, o ensáyelo sesenta veces más rápido. Un ensayo no toca nada suyo.</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Devices of the crew</source>
        <translation>Aparatos de la cuadrilla</translation>
    </message>
</context>
<context>
    <name>StrikePage</name>
    <message>
        <source>Strike</source>
        <translation>Recoger</translation>
    </message>
    <message>
        <source>Before the van leaves</source>
        <translation>Antes de que salga la camioneta</translation>
    </message>
    <message>
        <source>Never load warm coals. Ash rides in a metal bin with a lid, outside the cabin. Local fire and health codes decide.</source>
        <translation>Nunca cargue brasas tibias. La ceniza viaja en un bote de metal con tapa, fuera de la cabina. Deciden las normas locales contra incendios y de sanidad.</translation>
    </message>
    <message>
        <source>Strike, step by step</source>
        <translation>Recoger, paso a paso</translation>
    </message>
</context>
<context>
    <name>TaskColumn</name>
    <message>
        <source>Leave nothing out</source>
        <translation>No omitir nada</translation>
    </message>
    <message>
        <source>Leave a step out …</source>
        <translation>Omitir un paso …</translation>
    </message>
</context>
<context>
    <name>TaskPlate</name>
    <message>
        <source>Hold: leave out</source>
        <translation>Mantenga pulsado: omitir</translation>
    </message>
    <message>
        <source>Bring back</source>
        <translation>Recuperar</translation>
    </message>
    <message>
        <source>Planning…</source>
        <translation>Planeando…</translation>
    </message>
    <message>
        <source>Bring back: %1</source>
        <translation>Recuperar: %1</translation>
    </message>
</context>
<context>
    <name>TextSheet</name>
    <message>
        <source>Take it</source>
        <translation>Guardar</translation>
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
    <name>Words</name>
    <message>
        <source>plates and cutlery</source>
        <translation>platos y cubiertos</translation>
    </message>
</context>
<context>
    <name>cinder::face::CautionList</name>
    <message>
        <source>Source: %1</source>
        <translation>Fuente: %1</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>de memoria</translation>
    </message>
    <message>
        <source>Fire, coals and ash</source>
        <translation>Fuego, brasas y ceniza</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>Clima</translation>
    </message>
    <message>
        <source>Knives, steam, burns</source>
        <translation>Cuchillos, vapor, quemaduras</translation>
    </message>
    <message>
        <source>Food</source>
        <translation>Comida</translation>
    </message>
    <message>
        <source>Permits and people</source>
        <translation>Permisos y personas</translation>
    </message>
</context>
<context>
    <name>cinder::face::ChartWords</name>
    <message>
        <source>Inside this piece, with the band of 8 times in 10</source>
        <translation>El centro de esta pieza, con la franja de 8 de cada 10 veces</translation>
    </message>
    <message>
        <source>Inside piece %1, of the same class, with the band of 8 times in 10</source>
        <translation>El centro de la pieza %1, de la misma clase, con la franja de 8 de cada 10 veces</translation>
    </message>
    <message>
        <source>pull at %1</source>
        <translation>sacar a %1</translation>
    </message>
    <message>
        <source>published minimum %1</source>
        <translation>mínimo publicado %1</translation>
    </message>
    <message>
        <source>local minimum %1</source>
        <translation>mínimo local %1</translation>
    </message>
    <message>
        <source>The fire so far: each bar what cooks call that hand test</source>
        <translation>El fuego hasta ahora: cada barra, lo que los cocineros llaman esa prueba de la mano</translation>
    </message>
</context>
<context>
    <name>cinder::face::ChoiceWords</name>
    <message>
        <source>Cold dishes</source>
        <translation>Platos fríos</translation>
    </message>
    <message>
        <source>Bread</source>
        <translation>Pan</translation>
    </message>
    <message>
        <source>Hot sides</source>
        <translation>Guarniciones calientes</translation>
    </message>
    <message>
        <source>Mains</source>
        <translation>Platos fuertes</translation>
    </message>
    <message>
        <source>Sauces</source>
        <translation>Salsas</translation>
    </message>
    <message>
        <source>Fish</source>
        <translation>Pescado</translation>
    </message>
    <message>
        <source>Egg</source>
        <translation>Huevo</translation>
    </message>
    <message>
        <source>Plants</source>
        <translation>Vegetales</translation>
    </message>
    <message>
        <source>Dairy</source>
        <translation>Lácteos</translation>
    </message>
    <message>
        <source>Grain</source>
        <translation>Granos</translation>
    </message>
    <message>
        <source>Set up</source>
        <translation>Montar</translation>
    </message>
    <message>
        <source>Make fire</source>
        <translation>Hacer fuego</translation>
    </message>
    <message>
        <source>Prepare</source>
        <translation>Preparar</translation>
    </message>
    <message>
        <source>Cook on the grate</source>
        <translation>Asar a la parrilla</translation>
    </message>
    <message>
        <source>Rest</source>
        <translation>Reposar</translation>
    </message>
    <message>
        <source>Slice</source>
        <translation>Rebanar</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Terminar</translation>
    </message>
    <message>
        <source>Warm</source>
        <translation>Calentar</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Mantener</translation>
    </message>
    <message>
        <source>Load the line</source>
        <translation>Montar la línea</translation>
    </message>
    <message>
        <source>Serve</source>
        <translation>Servir</translation>
    </message>
    <message>
        <source>Strike</source>
        <translation>Recoger</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Revisar</translation>
    </message>
    <message>
        <source>Not at all</source>
        <translation>Nunca</translation>
    </message>
    <message>
        <source>All the time</source>
        <translation>Todo el tiempo</translation>
    </message>
    <message>
        <source>At the start</source>
        <translation>Al principio</translation>
    </message>
    <message>
        <source>At every turn</source>
        <translation>En cada vuelta</translation>
    </message>
    <message>
        <source>Hot box shelf</source>
        <translation>Estante de caja caliente</translation>
    </message>
    <message>
        <source>Cold box</source>
        <translation>Hielera</translation>
    </message>
    <message>
        <source>Chafer place</source>
        <translation>Lugar de calientaplatos</translation>
    </message>
    <message>
        <source>Burner</source>
        <translation>Quemador</translation>
    </message>
    <message>
        <source>Hand-wash stand</source>
        <translation>Lavamanos</translation>
    </message>
    <message>
        <source>Extinguisher</source>
        <translation>Extintor</translation>
    </message>
    <message>
        <source>Thermometer</source>
        <translation>Termómetro</translation>
    </message>
    <message>
        <source>Work top</source>
        <translation>Mesa de trabajo</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Otra cosa</translation>
    </message>
    <message>
        <source>Full</source>
        <translation>Entera</translation>
    </message>
    <message>
        <source>Two thirds</source>
        <translation>Dos tercios</translation>
    </message>
    <message>
        <source>Half</source>
        <translation>Media</translation>
    </message>
    <message>
        <source>Third</source>
        <translation>Un tercio</translation>
    </message>
    <message>
        <source>Quarter</source>
        <translation>Un cuarto</translation>
    </message>
    <message>
        <source>Sixth</source>
        <translation>Un sexto</translation>
    </message>
    <message>
        <source>2½ in</source>
        <translation>6.5 cm</translation>
    </message>
    <message>
        <source>4 in</source>
        <translation>10 cm</translation>
    </message>
    <message>
        <source>6 in</source>
        <translation>15 cm</translation>
    </message>
    <message>
        <source>Beef</source>
        <translation>Res</translation>
    </message>
    <message>
        <source>Lamb</source>
        <translation>Cordero</translation>
    </message>
    <message>
        <source>Pork</source>
        <translation>Cerdo</translation>
    </message>
    <message>
        <source>Rare</source>
        <translation>Rojo inglés</translation>
    </message>
    <message>
        <source>Medium rare</source>
        <translation>Medio rojo</translation>
    </message>
    <message>
        <source>Medium</source>
        <translation>Término medio</translation>
    </message>
    <message>
        <source>Medium well</source>
        <translation>Tres cuartos</translation>
    </message>
    <message>
        <source>Well done</source>
        <translation>Bien cocido</translation>
    </message>
    <message>
        <source>Whole meat</source>
        <translation>Carne entera</translation>
    </message>
    <message>
        <source>Ground, injected, tenderized</source>
        <translation>Molida, inyectada, ablandada</translation>
    </message>
    <message>
        <source>Poultry, game, stuffed</source>
        <translation>Aves, caza, relleno</translation>
    </message>
</context>
<context>
    <name>cinder::face::Crew</name>
    <message>
        <source>Nobody there could do what is still to be done: %1. Give it to somebody who is there, or leave it out first.</source>
        <translation>De los que quedan nadie podría hacer lo que falta: %1. Encárgueselo a alguien que esté, u omítalo primero.</translation>
    </message>
    <message>
        <source>More than 8 people are too many for one plan.</source>
        <translation>Más de 8 personas son demasiadas para un plan.</translation>
    </message>
    <message>
        <source>Everybody needs a name, of at most 200 letters.</source>
        <translation>Cada persona necesita un nombre, de 200 letras como máximo.</translation>
    </message>
    <message>
        <source>%1 comes</source>
        <translation>Llega %1</translation>
    </message>
    <message>
        <source>%1 is back</source>
        <translation>%1 volvió</translation>
    </message>
    <message>
        <source>%1 is gone</source>
        <translation>%1 se fue</translation>
    </message>
    <message>
        <source>%1 can do nothing of it</source>
        <translation>%1 no puede hacer nada de esto</translation>
    </message>
    <message>
        <source>%1 does: %2</source>
        <translation>%1 hace: %2</translation>
    </message>
</context>
<context>
    <name>cinder::face::CrewDevicesView</name>
    <message>
        <source>%1&apos;s device</source>
        <translation>Aparato de %1</translation>
    </message>
    <message>
        <source>Device %1</source>
        <translation>Aparato %1</translation>
    </message>
    <message>
        <source>The clocks agree</source>
        <translation>Los relojes coinciden</translation>
    </message>
    <message>
        <source>Its clock is %1 ahead</source>
        <translation>Su reloj va %1 adelantado</translation>
    </message>
    <message>
        <source>Its clock is %1 behind</source>
        <translation>Su reloj va %1 atrasado</translation>
    </message>
    <message>
        <source>The record of one event went two ways; it is left as it is on both.</source>
        <translation>El registro de un evento siguió dos caminos; se deja como está en ambos aparatos.</translation>
    </message>
    <message>
        <source>The records of %1 events went two ways; they are left as they are on both.</source>
        <translation>Los registros de %1 eventos siguieron dos caminos; se dejan como están en ambos aparatos.</translation>
    </message>
    <message>
        <source>1 entry to come</source>
        <translation>1 anotación por llegar</translation>
    </message>
    <message>
        <source>%1 entries to come</source>
        <translation>%1 anotaciones por llegar</translation>
    </message>
    <message>
        <source>1 entry to go</source>
        <translation>1 por enviar</translation>
    </message>
    <message>
        <source>%1 entries to go</source>
        <translation>%1 por enviar</translation>
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
        <source>Lead</source>
        <translation>Jefe</translation>
    </message>
    <message>
        <source>Enter the code</source>
        <translation>Ingrese el código</translation>
    </message>
    <message>
        <source>The code of this crew</source>
        <translation>El código de esta cuadrilla</translation>
    </message>
    <message>
        <source>Devices</source>
        <translation>Aparatos</translation>
    </message>
    <message>
        <source>On each other device, once: Devices, then Enter a code.</source>
        <translation>En cada uno de los demás, una sola vez: Aparatos y luego Ingresar código.</translation>
    </message>
    <message>
        <source>No other device has been in reach yet.</source>
        <translation>Ningún otro aparato ha estado al alcance todavía.</translation>
    </message>
    <message>
        <source>%1 of %2 in reach</source>
        <translation>%1 de %2 al alcance</translation>
    </message>
    <message>
        <source>This device has no room to make the key. Close other apps, then touch again.</source>
        <translation>Este aparato no tiene memoria para crear la clave. Cierre otras aplicaciones y toque otra vez.</translation>
    </message>
    <message>
        <source>One digit is not right. Compare it with the other screen.</source>
        <translation>Un dígito no es correcto. Compare con la otra pantalla.</translation>
    </message>
    <message>
        <source>This device is in no local network. Switch on a hotspot on one phone and join it with the others; no internet is needed.</source>
        <translation>Este aparato no está en ninguna red local. Active el punto de acceso de un teléfono y conecte a él los demás; no hace falta internet.</translation>
    </message>
    <message>
        <source>Another program on this device listens where this app would. Close it, or start this device again.</source>
        <translation>Otro programa de este aparato ocupa el puerto de esta aplicación. Ciérrelo o reinicie el aparato.</translation>
    </message>
    <message>
        <source>The code could not be kept: this device forgets it when the app ends. Free some space, then leave and enter the code again.</source>
        <translation>El código no se pudo guardar: este aparato lo olvida al cerrar la aplicación. Libere espacio, deje los demás aparatos e ingrese otra vez el código.</translation>
    </message>
    <message>
        <source>This device lacks what guards the connection, so nothing is exchanged. Update its system and this app.</source>
        <translation>A este aparato le falta lo que protege la conexión y no se intercambia nada. Actualice su sistema y esta aplicación.</translation>
    </message>
    <message>
        <source>Out of reach since %1. It catches up by itself once it is near again, in the same network.</source>
        <translation>Fuera de alcance; visto por última vez: %1. Se pondrá al día solo cuando vuelva a estar cerca, en la misma red.</translation>
    </message>
    <message>
        <source>In reach, everything is on both</source>
        <translation>Al alcance, todo está en ambos</translation>
    </message>
    <message>
        <source>In reach, exchanging</source>
        <translation>Al alcance, intercambiando</translation>
    </message>
    <message>
        <source>In reach, %1</source>
        <translation>Al alcance, %1</translation>
    </message>
    <message>
        <source>The clocks are %1 apart: set the wrong one right. Nothing is exchanged until then.</source>
        <translation>Los relojes difieren %1: corrija el que está mal. Hasta entonces no se intercambia nada.</translation>
    </message>
    <message>
        <source>The clocks are far apart: set the wrong one right. Nothing is exchanged until then.</source>
        <translation>Los relojes difieren mucho: corrija el que está mal. Hasta entonces no se intercambia nada.</translation>
    </message>
    <message>
        <source>Another version of the app: update the older one. Nothing is exchanged until then.</source>
        <translation>Otra versión de la aplicación: actualice la más antigua. Hasta entonces no se intercambia nada.</translation>
    </message>
    <message>
        <source>What arrives cannot be noted: free some space on both devices.</source>
        <translation>Lo que llega no se puede anotar: libere espacio en ambos aparatos.</translation>
    </message>
    <message>
        <source>In reach, comparing</source>
        <translation>Al alcance, comparando</translation>
    </message>
    <message>
        <source>%1 is out of reach since %2: bring it near, into the same network.</source>
        <translation>%1: fuera de alcance (última vez: %2). Acérquelo y conéctelo a la misma red.</translation>
    </message>
    <message>
        <source>%1 devices are out of reach, one since %2: bring them near, into the same network.</source>
        <translation>%1 aparatos fuera de alcance (uno desde: %2). Acérquelos y conéctelos a la misma red.</translation>
    </message>
    <message>
        <source>The other device shows it under Devices.</source>
        <translation>El otro aparato lo muestra en Aparatos.</translation>
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
        <source>8 days in 10 by %1</source>
        <translation>8 de cada 10 días a las %1</translation>
    </message>
    <message>
        <source>15 min earlier: %1</source>
        <translation>15 min antes: %1</translation>
    </message>
    <message>
        <source>Battery %1 %</source>
        <translation>Batería %1 %</translation>
    </message>
    <message>
        <source>The clock is right now</source>
        <translation>El reloj ya está bien</translation>
    </message>
</context>
<context>
    <name>cinder::face::Debrief</name>
    <message>
        <source>as planned</source>
        <translation>como estaba planeado</translation>
    </message>
    <message>
        <source>%1 longer</source>
        <translation>%1 más</translation>
    </message>
    <message>
        <source>%1 shorter</source>
        <translation>%1 menos</translation>
    </message>
    <message>
        <source>%1, batch&#xa0;%2</source>
        <translation>%1, tanda&#xa0;%2</translation>
    </message>
    <message>
        <source>planned %1, %2</source>
        <translation>planeado %1, %2</translation>
    </message>
    <message>
        <source>was %1, %2</source>
        <translation>fue %1, %2</translation>
    </message>
    <message>
        <source>Something came between: it does not count.</source>
        <translation>Algo se interpuso: no cuenta.</translation>
    </message>
    <message>
        <source>Far from the plan. Did something come between?</source>
        <translation>Lejos de lo planeado. ¿Algo se interpuso?</translation>
    </message>
    <message>
        <source>It counts</source>
        <translation>Sí cuenta</translation>
    </message>
    <message>
        <source>Planned %1, learnt %2 (8 times in 10: %3 to %4)</source>
        <translation>Planeado %1, aprendido %2 (8 de cada 10 veces: de %3 a %4)</translation>
    </message>
    <message>
        <source>Taken by %1 of 100 guests as planned, by %2 as learnt (8 times in 10: %3 to %4)</source>
        <translation>Lo toman %1 de 100 invitados según el plan, %2 según lo aprendido (8 de cada 10 veces: de %3 a %4)</translation>
    </message>
    <message>
        <source>from 1 event</source>
        <translation>de 1 evento</translation>
    </message>
    <message>
        <source>from %1 events</source>
        <translation>de %1 eventos</translation>
    </message>
    <message>
        <source>%1 left out</source>
        <translation>sin contar: %1</translation>
    </message>
    <message>
        <source>Goes into the next event made from this one</source>
        <translation>Pasa al próximo evento hecho de este</translation>
    </message>
    <message>
        <source>Left as planned</source>
        <translation>Queda como estaba planeado</translation>
    </message>
    <message>
        <source>Nothing was begun and finished yet: there is nothing to compare.</source>
        <translation>Todavía no se empezó y terminó nada: no hay qué comparar.</translation>
    </message>
    <message>
        <source>Begun and finished: %1 tasks</source>
        <translation>Tareas empezadas y terminadas: %1</translation>
    </message>
    <message>
        <source>This was a rehearsal. It can be looked at, and teaches nothing.</source>
        <translation>Fue un ensayo. Se puede mirar, y no enseña nada.</translation>
    </message>
    <message>
        <source>Nothing differs enough from the plan to be worth a change.</source>
        <translation>Nada difiere del plan lo bastante para cambiarlo.</translation>
    </message>
    <message>
        <source>Events looked at: %1. Before any event the plan is believed right to a quarter; each event draws the figure a little.</source>
        <translation>Eventos considerados: %1. Antes de cualquier evento se cree que el plan acierta dentro de una cuarta parte; cada evento mueve un poco la cifra.</translation>
    </message>
    <message>
        <source>%1: %2 of %3 pans</source>
        <translation>%1: %2 de %3 charolas</translation>
    </message>
    <message>
        <source>Interrupted</source>
        <translation>Interrumpida</translation>
    </message>
</context>
<context>
    <name>cinder::face::Editor</name>
    <message>
        <source>From the beginning, kit and crew set</source>
        <translation>Desde cero, con equipo y cuadrilla</translation>
    </message>
    <message>
        <source>Like this one of %1</source>
        <translation>Como este del %1</translation>
    </message>
    <message>
        <source>From a file</source>
        <translation>De un archivo</translation>
    </message>
    <message>
        <source>%1 is not an event this app can read: %2</source>
        <translation>%1 no es un evento que esta app pueda leer: %2</translation>
    </message>
    <message>
        <source>the file is damaged or something else</source>
        <translation>el archivo está dañado o es otra cosa</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Escrito: %1</translation>
    </message>
    <message>
        <source>The file could not be written. Make room, or let the app use the documents folder.</source>
        <translation>No se pudo escribir el archivo. Libere espacio, o permita usar la carpeta de documentos.</translation>
    </message>
    <message>
        <source>No plan can be found for this. Take a dish off the menu, bring more people or more kit, or let the crew come earlier.</source>
        <translation>No se encuentra ningún plan. Quite un plato del menú, lleve más gente o más equipo, o que la cuadrilla llegue antes.</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>Guests</source>
        <translation>Invitados</translation>
    </message>
    <message>
        <source>Menu</source>
        <translation>Menú</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Crew</source>
        <translation>Cuadrilla</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Equipo</translation>
    </message>
    <message>
        <source>1 guest</source>
        <translation>1 invitado</translation>
    </message>
    <message>
        <source>%1 guests</source>
        <translation>%1 invitados</translation>
    </message>
    <message>
        <source>1 dish</source>
        <translation>1 plato</translation>
    </message>
    <message>
        <source>%1 dishes</source>
        <translation>%1 platos</translation>
    </message>
    <message>
        <source>1 person</source>
        <translation>1 persona</translation>
    </message>
    <message>
        <source>%1 people</source>
        <translation>%1 personas</translation>
    </message>
    <message>
        <source>1 kind of things</source>
        <translation>1 tipo de cosas</translation>
    </message>
    <message>
        <source>%1 kinds of things</source>
        <translation>%1 tipos de cosas</translation>
    </message>
    <message>
        <source>Library of dishes</source>
        <translation>Recetario</translation>
    </message>
    <message>
        <source>Nothing is missing.</source>
        <translation>No falta nada.</translation>
    </message>
    <message>
        <source>1 thing to settle first</source>
        <translation>Por resolver: 1</translation>
    </message>
    <message>
        <source>%1 things to settle first</source>
        <translation>Por resolver: %1</translation>
    </message>
    <message>
        <source>A plan is being searched…</source>
        <translation>Se busca un plan…</translation>
    </message>
</context>
<context>
    <name>cinder::face::EventFields</name>
    <message>
        <source>Name of the event</source>
        <translation>Nombre del evento</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Mes</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Año</translation>
    </message>
    <message>
        <source>Serve at %1</source>
        <translation>Servir a las %1</translation>
    </message>
    <message>
        <source>Hour, 0 to 23</source>
        <translation>Hora, de 0 a 23</translation>
    </message>
    <message>
        <source>Minute</source>
        <translation>Minuto</translation>
    </message>
    <message>
        <source>Adults</source>
        <translation>Adultos</translation>
    </message>
    <message>
        <source>Children</source>
        <translation>Niños</translation>
    </message>
    <message>
        <source>More than %1 guests for each of the crew. Bring more people, or make two events of it.</source>
        <translation>Más de %1 invitados por persona de la cuadrilla. Lleve más gente o haga dos eventos.</translation>
    </message>
    <message>
        <source>Diets, how many guests</source>
        <translation>Dietas, cuántos invitados</translation>
    </message>
    <message>
        <source>Allergies, how many guests</source>
        <translation>Alergias, cuántos invitados</translation>
    </message>
    <message>
        <source>No allergy is noted. Unknown is not none: ask the client.</source>
        <translation>No hay alergias anotadas. No saber no es que no haya: pregunte al cliente.</translation>
    </message>
    <message>
        <source>Ask the client again when guests change.</source>
        <translation>Vuelva a preguntar al cliente si cambian los invitados.</translation>
    </message>
    <message>
        <source>Name of the place</source>
        <translation>Nombre del lugar</translation>
    </message>
    <message>
        <source>Address</source>
        <translation>Dirección</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
    <message>
        <source>Drive from the kitchen</source>
        <translation>Camino desde la cocina</translation>
    </message>
    <message>
        <source>On foot, one way</source>
        <translation>A pie, solo de ida</translation>
    </message>
    <message>
        <source>When may the crew come?</source>
        <translation>¿Cuándo puede llegar la cuadrilla?</translation>
    </message>
    <message>
        <source>As late as it can</source>
        <translation>Lo más tarde posible</translation>
    </message>
    <message>
        <source>An agreed time</source>
        <translation>Hora acordada</translation>
    </message>
    <message>
        <source>Before the bell</source>
        <translation>Antes de la campana</translation>
    </message>
    <message>
        <source>The crew arrives at %1.</source>
        <translation>La cuadrilla llega a las %1.</translation>
    </message>
    <message>
        <source>From 1 to 8 people.</source>
        <translation>De 1 a 8 personas.</translation>
    </message>
    <message>
        <source>One person more</source>
        <translation>Una persona más</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Agregar</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>What this person can do</source>
        <translation>Qué sabe hacer</translation>
    </message>
    <message>
        <source>Take out of the crew</source>
        <translation>Quitar de la cuadrilla</translation>
    </message>
</context>
<context>
    <name>cinder::face::Events</name>
    <message>
        <source>Earlier events: %1</source>
        <translation>Eventos anteriores: %1</translation>
    </message>
    <message>
        <source>Everything on this device is in %1. Carry the file to another device or card.</source>
        <translation>Todo lo de este aparato está en %1. Lleve el archivo a otro aparato o a una tarjeta.</translation>
    </message>
    <message>
        <source>All of this copy is on this device already.</source>
        <translation>Todo lo de esta copia ya está en este aparato.</translation>
    </message>
    <message>
        <source>1 event</source>
        <translation>1 evento</translation>
    </message>
    <message>
        <source>%1 events</source>
        <translation>%1 eventos</translation>
    </message>
    <message>
        <source>1 entry</source>
        <translation>1 anotación</translation>
    </message>
    <message>
        <source>%1 entries</source>
        <translation>%1 anotaciones</translation>
    </message>
    <message>
        <source>Taken back: %1, %2 in all.</source>
        <translation>Recuperado: %1, %2 en total.</translation>
    </message>
    <message>
        <source>Went another way here and stays as it is: %1.</source>
        <translation>Siguió otro camino aquí y queda como está: %1.</translation>
    </message>
    <message>
        <source>Damaged: cannot be read on this device</source>
        <translation>Dañado: no puede leerse en este aparato</translation>
    </message>
    <message>
        <source>The record of event %1 is not as it was written, and was copied as it stands: keep older copies too.</source>
        <translation>El registro del evento %1 no está como se escribió y se copió tal cual: conserve también las copias anteriores.</translation>
    </message>
    <message>
        <source>Nothing was added.</source>
        <translation>No se añadió nada.</translation>
    </message>
    <message>
        <source>Changed or damaged in the copy and not taken: %1.</source>
        <translation>Alterados o dañados en la copia y no recuperados: %1.</translation>
    </message>
</context>
<context>
    <name>cinder::face::FaultWords</name>
    <message>
        <source>The thin end is wider than the piece. Make it narrower, or the piece wider.</source>
        <translation>La punta es más ancha que la pieza. Hágala más angosta, o la pieza más ancha.</translation>
    </message>
    <message>
        <source>Wider than it is long. Swap the two, or make the length larger.</source>
        <translation>Más ancha que larga. Cambie una por otra, o aumente el largo.</translation>
    </message>
    <message>
        <source>The cool side leaves no hot side. Make it smaller than the grate is long.</source>
        <translation>El lado frío no deja lado caliente. Hágalo menor que el largo de la parrilla.</translation>
    </message>
    <message>
        <source>At best takes longer than usual. Make it at most the usual time.</source>
        <translation>Lo mejor tarda más que lo normal. Póngalo a lo sumo igual.</translation>
    </message>
    <message>
        <source>At worst is shorter than usual. Make it at least the usual time.</source>
        <translation>Lo peor tarda menos que lo normal. Póngalo al menos igual.</translation>
    </message>
    <message>
        <source>The crew arrives after the bell. Choose a time before it.</source>
        <translation>La cuadrilla llega después de la campana. Elija una hora anterior.</translation>
    </message>
    <message>
        <source>Less than it must wait at least. Make it longer.</source>
        <translation>Menos que la espera mínima. Alárguelo.</translation>
    </message>
    <message>
        <source>The hands need more time than there is. Make this shorter, or the step longer.</source>
        <translation>Las manos necesitan más tiempo del que hay. Acorte esto o alargue el paso.</translation>
    </message>
    <message>
        <source>A piece does not fit this grate. Make the piece smaller or the grate larger.</source>
        <translation>Una pieza no cabe en esta parrilla. Achique la pieza o agrande la parrilla.</translation>
    </message>
    <message>
        <source>Does not fit what the dish contains. Take the diet away, or correct the dish.</source>
        <translation>No va con lo que contiene el plato. Quite la dieta o corrija el plato.</translation>
    </message>
    <message>
        <source>Something still uses it. Free that first.</source>
        <translation>Algo todavía lo usa. Libérelo primero.</translation>
    </message>
    <message>
        <source>Still needed by: %1. Change that first.</source>
        <translation>Todavía lo necesita: %1. Cambie eso primero.</translation>
    </message>
    <message>
        <source>Contradicts another field. Change one of the two.</source>
        <translation>Contradice otro campo. Cambie uno de los dos.</translation>
    </message>
    <message>
        <source>The menu is empty. Add a dish.</source>
        <translation>El menú está vacío. Agregue un plato.</translation>
    </message>
    <message>
        <source>A crew is 1 to 8 people.</source>
        <translation>Una cuadrilla es de 1 a 8 personas.</translation>
    </message>
    <message>
        <source>Nobody is invited. Say how many guests come.</source>
        <translation>No hay invitados. Diga cuántos vienen.</translation>
    </message>
    <message>
        <source>The kit has only %1. Use fewer, or bring more.</source>
        <translation>El equipo solo tiene %1. Use menos o lleve más.</translation>
    </message>
    <message>
        <source>The shares come to %1 %. Make them 100 %.</source>
        <translation>Las partes suman %1 %. Que sumen 100 %.</translation>
    </message>
    <message>
        <source>Empty or far too long. Type a few words.</source>
        <translation>Vacío o demasiado largo. Escriba unas palabras.</translation>
    </message>
    <message>
        <source>%1 is outside the limits. From %2 to %3.</source>
        <translation>%1 está fuera de los límites. De %2 a %3.</translation>
    </message>
    <message>
        <source>%1 is outside the limits.</source>
        <translation>%1 está fuera de los límites.</translation>
    </message>
    <message>
        <source>The yield is missing: type how much is ready to eat of 100 bought.</source>
        <translation>Falta el rendimiento: escriba cuánto queda listo de 100 comprados.</translation>
    </message>
    <message>
        <source>No arrival is agreed, so there is no time to leave.</source>
        <translation>No hay hora de llegada acordada, así que no hay hora de salida.</translation>
    </message>
    <message>
        <source>Missing: fill it in, or nothing can be reckoned from it.</source>
        <translation>Falta: complételo, o no se puede calcular con ello.</translation>
    </message>
    <message>
        <source>Nobody in the crew has this skill, or too few have. Give it to somebody, or choose another.</source>
        <translation>Nadie o muy pocos saben hacerlo. Désela a alguien o elija otra.</translation>
    </message>
    <message>
        <source>That is no longer there. Choose another.</source>
        <translation>Eso ya no está. Elija otro.</translation>
    </message>
    <message>
        <source>These steps wait for each other. Let one of them wait no longer.</source>
        <translation>Estos pasos se esperan uno al otro. Que uno ya no espere.</translation>
    </message>
    <message>
        <source>There is no such time. Choose another.</source>
        <translation>Esa hora no existe. Elija otra.</translation>
    </message>
    <message>
        <source>This cannot be kept. Take it back, or type it anew.</source>
        <translation>Esto no se puede guardar. Deshágalo o escríbalo de nuevo.</translation>
    </message>
    <message>
        <source>Only whole meat is of one animal. Take the animal away, or choose whole meat.</source>
        <translation>Solo la carne entera es de un animal. Quite el animal o elija carne entera.</translation>
    </message>
    <message>
        <source>Either a doneness, of meat or fish only, or a temperature of your own. Keep one.</source>
        <translation>O un término, solo de carne o pescado, o una temperatura propia. Deje uno.</translation>
    </message>
    <message>
        <source>Without a place: %1. Choose another place there first.</source>
        <translation>Sin lugar: %1. Elija antes otro lugar ahí.</translation>
    </message>
    <message>
        <source>Food of this kind holds an allergen that is not ticked. Tick it, or choose another food.</source>
        <translation>Este tipo de alimento tiene un alérgeno que no está marcado. Márquelo o elija otro alimento.</translation>
    </message>
    <message>
        <source>Too few portions fit this diet. Add a main that does, or let more take it.</source>
        <translation>Muy pocas porciones sirven para esta dieta. Agregue un principal que sirva, o que lo tomen más personas.</translation>
    </message>
    <message>
        <source>Too few portions are without it. Add a main that is, or let more take it.</source>
        <translation>Muy pocas porciones no lo contienen. Agregue un principal que no lo contenga, o que lo tomen más personas.</translation>
    </message>
    <message>
        <source>Counted pieces are weighed raw: cooking takes nothing from what is bought. Type how much is left of 100 bought before it is cooked.</source>
        <translation>Las piezas contadas se pesan crudas: la cocción no quita nada a lo comprado. Escriba cuánto queda de 100 comprados antes de cocinar.</translation>
    </message>
</context>
<context>
    <name>cinder::face::FieldList</name>
    <message>
        <source>%1 in</source>
        <translation>%1 in</translation>
    </message>
    <message>
        <source>%1 cm</source>
        <translation>%1 cm</translation>
    </message>
    <message>
        <source>%1 lb</source>
        <translation>%1 lb</translation>
    </message>
    <message>
        <source>%1 g</source>
        <translation>%1 g</translation>
    </message>
    <message>
        <source>%1 kg</source>
        <translation>%1 kg</translation>
    </message>
    <message>
        <source>%1 qt</source>
        <translation>%1 qt</translation>
    </message>
    <message>
        <source>%1 l</source>
        <translation>%1 l</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Quitar</translation>
    </message>
</context>
<context>
    <name>cinder::face::Figures</name>
    <message>
        <source>1 adult</source>
        <translation>1 adulto</translation>
    </message>
    <message>
        <source>%1 adults</source>
        <translation>%1 adultos</translation>
    </message>
    <message>
        <source>1 child</source>
        <translation>1 niño</translation>
    </message>
    <message>
        <source>%1 children</source>
        <translation>%1 niños</translation>
    </message>
    <message>
        <source>What if: nothing is changed yet. Agreed are %1.</source>
        <translation>Prueba: aún no cambia nada. Acordado: %1.</translation>
    </message>
    <message>
        <source>your own figure; reckoned: %1</source>
        <translation>cifra propia; calculado: %1</translation>
    </message>
    <message>
        <source>To buy</source>
        <translation>Por comprar</translation>
    </message>
    <message>
        <source>Line and guests</source>
        <translation>Línea e invitados</translation>
    </message>
    <message>
        <source>now %1</source>
        <translation>ahora %1</translation>
    </message>
    <message>
        <source>Adults</source>
        <translation>Adultos</translation>
    </message>
    <message>
        <source>Children</source>
        <translation>Niños</translation>
    </message>
</context>
<context>
    <name>cinder::face::Fire</name>
    <message>
        <source>pull now</source>
        <translation>sacar ya</translation>
    </message>
    <message>
        <source>%1 to pull</source>
        <translation>%1 para sacar</translation>
    </message>
    <message>
        <source>into pan %1 at %2</source>
        <translation>a la charola %1 a las %2</translation>
    </message>
    <message>
        <source>Back over the coals</source>
        <translation>De vuelta a las brasas</translation>
    </message>
    <message>
        <source>To the cool side</source>
        <translation>Al lado frío</translation>
    </message>
    <message>
        <source>Pull into pan %1</source>
        <translation>Sacar a la charola %1</translation>
    </message>
    <message>
        <source>%1: what does the probe show?</source>
        <translation>%1: ¿qué marca la sonda?</translation>
    </message>
    <message>
        <source>How warm was the meat inside when it went on?</source>
        <translation>¿Qué temperatura tenía la carne por dentro al ponerla?</translation>
    </message>
    <message>
        <source>How long did a palm bear the heat at the height of the grate?</source>
        <translation>¿Cuánto aguantó la palma el calor a la altura de la parrilla?</translation>
    </message>
    <message>
        <source>How much coal was added?</source>
        <translation>¿Cuánto carbón se agregó?</translation>
    </message>
    <message>
        <source>Which pieces come off now?</source>
        <translation>¿Qué piezas salen ahora?</translation>
    </message>
    <message>
        <source>Touch the pieces to pull</source>
        <translation>Toque las piezas que salen</translation>
    </message>
    <message>
        <source>Pull 1 piece into pan %1</source>
        <translation>Sacar 1 pieza a la charola %1</translation>
    </message>
    <message>
        <source>Pull %1 pieces into pan %2</source>
        <translation>Sacar %1 piezas a la charola %2</translation>
    </message>
</context>
<context>
    <name>cinder::face::FireWords</name>
    <message>
        <source>to come</source>
        <translation>por venir</translation>
    </message>
    <message>
        <source>over the coals</source>
        <translation>sobre las brasas</translation>
    </message>
    <message>
        <source>on the cool side</source>
        <translation>en el lado frío</translation>
    </message>
    <message>
        <source>due</source>
        <translation>por sacar</translation>
    </message>
    <message>
        <source>pulled</source>
        <translation>sacada</translation>
    </message>
    <message>
        <source>Piece %1 of %2</source>
        <translation>Pieza %1 de %2</translation>
    </message>
    <message>
        <source>now</source>
        <translation>ya</translation>
    </message>
    <message>
        <source>8 times in 10 between %1 and %2</source>
        <translation>8 de cada 10 veces entre %1 y %2</translation>
    </message>
    <message>
        <source>Pull at %1</source>
        <translation>Sacar a %1</translation>
    </message>
    <message>
        <source>The target lies below the local minimum. Only a thermometer tells whether a piece reached it; the forecast never says safe.</source>
        <translation>La meta está por debajo del mínimo local. Solo un termómetro dice si la pieza lo alcanzó; el pronóstico nunca dice que sea seguro.</translation>
    </message>
    <message>
        <source>The target lies below the published minimum. Only a thermometer tells whether a piece reached it; the forecast never says safe.</source>
        <translation>La meta está por debajo del mínimo publicado. Solo un termómetro dice si la pieza lo alcanzó; el pronóstico nunca dice que sea seguro.</translation>
    </message>
    <message>
        <source>Climbs after the pull to about %1 (%2 to %3)</source>
        <translation>Después de sacarla sube a unos %1 (%2 a %3)</translation>
    </message>
    <message>
        <source>Probe showed %1 at %2</source>
        <translation>La sonda marcó %1 a las %2</translation>
    </message>
    <message>
        <source>looked done</source>
        <translation>se veía lista</translation>
    </message>
    <message>
        <source>looked not done yet</source>
        <translation>aún no se veía lista</translation>
    </message>
    <message>
        <source>No forecast for this food: the plan&apos;s estimate stands.</source>
        <translation>No hay pronóstico para este alimento: vale la estimación del plan.</translation>
    </message>
    <message>
        <source>No forecast: the event does not say how thick the pieces are. The plan&apos;s estimate stands.</source>
        <translation>Sin pronóstico: el evento no dice qué grosor tienen las piezas. Vale la estimación del plan.</translation>
    </message>
    <message>
        <source>No forecast yet, the plan&apos;s estimate stands. Tell how warm the meat was when it went on, and test the fire by hand.</source>
        <translation>Aún sin pronóstico, vale la estimación del plan. Anote la temperatura de la carne al ponerla y pruebe el fuego con la mano.</translation>
    </message>
    <message>
        <source>No forecast yet, the plan&apos;s estimate stands. Tell how warm the meat was when it went on.</source>
        <translation>Aún sin pronóstico, vale la estimación del plan. Anote la temperatura de la carne al ponerla.</translation>
    </message>
    <message>
        <source>No forecast yet, the plan&apos;s estimate stands. Test the fire by hand.</source>
        <translation>Aún sin pronóstico, vale la estimación del plan. Pruebe el fuego con la mano.</translation>
    </message>
    <message>
        <source>Piece %1</source>
        <translation>Pieza %1</translation>
    </message>
    <message>
        <source>Hand test %1 at %2</source>
        <translation>Prueba de la mano %1 a las %2</translation>
    </message>
    <message>
        <source>: about %1–%2 at the grate</source>
        <translation>: unos %1–%2 en la parrilla</translation>
    </message>
    <message>
        <source>Add coal by %1</source>
        <translation>Agregar carbón antes de las %1</translation>
    </message>
    <message>
        <source>%1 on it, %2 due</source>
        <translation>Puestas: %1 · por sacar: %2</translation>
    </message>
    <message>
        <source>%1 on it</source>
        <translation>Puestas: %1</translation>
    </message>
    <message>
        <source>%1 of %2 on the grate</source>
        <translation>%1 de %2 en la parrilla</translation>
    </message>
    <message>
        <source>about %1 to pull (%2 to %3)</source>
        <translation>unos %1 para sacar (%2 a %3)</translation>
    </message>
    <message>
        <source>From the first piece to the last about %1 (%2 to %3)</source>
        <translation>De la primera pieza a la última unos %1 (%2 a %3)</translation>
    </message>
    <message>
        <source>Laid at %1 inside</source>
        <translation>Puesta a %1 por dentro</translation>
    </message>
    <message>
        <source>Readings so far count like %1 at %2; the published roast table asks %3 there.</source>
        <translation>Las lecturas hasta ahora cuentan como %1 a %2; la tabla publicada de asados pide allí %3.</translation>
    </message>
    <message>
        <source>Gaps longer than 15 min count for nothing.</source>
        <translation>Las pausas de más de 15 min no cuentan.</translation>
    </message>
    <message>
        <source>Pan %1 · %2</source>
        <translation>Charola %1 · %2</translation>
    </message>
    <message>
        <source>%1 of %2 pieces, the last at %3</source>
        <translation>%1 de %2 piezas, la última a las %3</translation>
    </message>
    <message>
        <source>Information only: one probe at one place, intact roasts of beef, lamb or pork. Below %1 treat it as advice and add margin. The food code and a thermometer at the published minimum decide.</source>
        <translation>Solo informa: una sonda en un lugar, asados enteros de res, cordero o cerdo. Por debajo de %1 tómelo como consejo y añada margen. Deciden el código alimentario y un termómetro en el mínimo publicado.</translation>
    </message>
    <message>
        <source>By published heating values %1 to %2; by the depth of bed that cooks keep, without a source, %3.</source>
        <translation>Según poderes caloríficos publicados, de %1 a %2; según la cama que usan los cocineros, sin fuente, %3.</translation>
    </message>
    <message>
        <source>Coal for the day: %1, 1 bag.</source>
        <translation>Carbón para el día: %1, 1 bolsa.</translation>
    </message>
    <message>
        <source>Coal for the day: %1, %2 bags.</source>
        <translation>Carbón para el día: %1, %2 bolsas.</translation>
    </message>
    <message>
        <source>every %1 it would not get there</source>
        <translation>cada %1 no llegaría</translation>
    </message>
    <message>
        <source>every %1 makes no difference</source>
        <translation>cada %1 no cambia nada</translation>
    </message>
    <message>
        <source>every %1 takes %2 longer</source>
        <translation>cada %1 tarda %2 más</translation>
    </message>
    <message>
        <source>every %1 saves %2</source>
        <translation>cada %1 ahorra %2</translation>
    </message>
    <message>
        <source>Turned every %1 it lies about %2 in all; %3, %4.</source>
        <translation>Volteada cada %1 está unos %2 en total; %3, %4.</translation>
    </message>
    <message>
        <source>No forecast: by the model this fire brings no piece to the target in four hours. The plan&apos;s estimate stands; test the fire again and go by the thermometer.</source>
        <translation>Sin pronóstico: según el modelo, este fuego no lleva ninguna pieza al objetivo en cuatro horas. Vale la estimación del plan; pruebe el fuego de nuevo y guíese por el termómetro.</translation>
    </message>
    <message>
        <source>Readings that no piece can have given are left out of the forecast: %1. Probe again, and look at the unit.</source>
        <translation>Lecturas que ninguna pieza puede haber dado, fuera del pronóstico: %1. Mida otra vez y fíjese en la unidad.</translation>
    </message>
    <message>
        <source>No forecast: the meat was laid frozen, and the model knows thawed meat only. The plan&apos;s estimate stands; go by the thermometer.</source>
        <translation>Sin pronóstico: la carne se puso congelada y el modelo solo conoce carne descongelada. Vale la estimación del plan; guíese por el termómetro.</translation>
    </message>
    <message>
        <source>No forecast: the meat was laid as warm as it is to be pulled. The plan&apos;s estimate stands; take that back if it was a slip, and go by the thermometer.</source>
        <translation>Sin pronóstico: la carne se puso tan caliente como debe sacarse. Vale la estimación del plan; deshágalo si fue un error y guíese por el termómetro.</translation>
    </message>
    <message>
        <source>No forecast: the model knows pieces of 3 to 299 mm. The plan&apos;s estimate stands; look at the thickness in the event, and go by the thermometer.</source>
        <translation>Sin pronóstico: el modelo conoce piezas de 3 a 299 mm. Vale la estimación del plan; revise el grosor en el evento y guíese por el termómetro.</translation>
    </message>
    <message>
        <source>No forecast: what was told of this batch does not fit together (%1). The plan&apos;s estimate stands; go by the thermometer.</source>
        <translation>Sin pronóstico: lo que se dijo de esta tanda no concuerda (%1). Vale la estimación del plan; guíese por el termómetro.</translation>
    </message>
</context>
<context>
    <name>cinder::face::FoodClosing</name>
    <message>
        <source>Cold holding</source>
        <translation>Mantenimiento en frío</translation>
    </message>
    <message>
        <source>Hot holding</source>
        <translation>Mantenimiento en caliente</translation>
    </message>
    <message>
        <source>Hot holding of whole roasts</source>
        <translation>Mantenimiento en caliente de asados enteros</translation>
    </message>
    <message>
        <source>Air around shell eggs</source>
        <translation>Aire alrededor de huevos con cáscara</translation>
    </message>
    <message>
        <source>Cold food on arrival</source>
        <translation>Comida fría al llegar</translation>
    </message>
    <message>
        <source>Hot food on arrival</source>
        <translation>Comida caliente al llegar</translation>
    </message>
    <message>
        <source>Cooked poultry</source>
        <translation>Aves cocidas</translation>
    </message>
    <message>
        <source>Cooked ground meat, pooled eggs</source>
        <translation>Carne molida y huevos batidos cocidos</translation>
    </message>
    <message>
        <source>Cooked whole meat and fish</source>
        <translation>Carne entera y pescado cocidos</translation>
    </message>
    <message>
        <source>Cooked plant food</source>
        <translation>Vegetales cocidos</translation>
    </message>
    <message>
        <source>Cooked in a microwave oven</source>
        <translation>Cocido en microondas</translation>
    </message>
    <message>
        <source>Reheated for holding</source>
        <translation>Recalentado para la espera</translation>
    </message>
    <message>
        <source>Reheated from a sealed pack</source>
        <translation>Recalentado de paquete sellado</translation>
    </message>
    <message>
        <source>Cooling starts</source>
        <translation>Empieza el enfriado</translation>
    </message>
    <message>
        <source>Cooling, first stage</source>
        <translation>Enfriado, primera etapa</translation>
    </message>
    <message>
        <source>Cooling, end</source>
        <translation>Enfriado, final</translation>
    </message>
    <message>
        <source>Time control begins hot</source>
        <translation>Control de tiempo empieza caliente</translation>
    </message>
    <message>
        <source>Time control begins cold</source>
        <translation>Control de tiempo empieza frío</translation>
    </message>
    <message>
        <source>Time control of fresh produce</source>
        <translation>Control de tiempo de producto fresco</translation>
    </message>
    <message>
        <source>Warmest in the long time control</source>
        <translation>Lo más tibio en el control largo</translation>
    </message>
    <message>
        <source>Whole meat kept there</source>
        <translation>Carne entera mantenida ahí</translation>
    </message>
    <message>
        <source>Ground meat kept there</source>
        <translation>Carne molida mantenida ahí</translation>
    </message>
    <message>
        <source>Standing after a microwave oven</source>
        <translation>Reposo tras el microondas</translation>
    </message>
    <message>
        <source>Reheated, kept there</source>
        <translation>Recalentado, mantenido ahí</translation>
    </message>
    <message>
        <source>Reheated within</source>
        <translation>Recalentado en</translation>
    </message>
    <message>
        <source>Cooling, first stage within</source>
        <translation>Enfriado, primera etapa en</translation>
    </message>
    <message>
        <source>Cooling, end within</source>
        <translation>Enfriado, final en</translation>
    </message>
    <message>
        <source>Cooling from room-warm things within</source>
        <translation>Enfriado desde temperatura ambiente en</translation>
    </message>
    <message>
        <source>Time control</source>
        <translation>Control de tiempo</translation>
    </message>
    <message>
        <source>Long time control</source>
        <translation>Control de tiempo largo</translation>
    </message>
    <message>
        <source>First heating of a cook in two steps</source>
        <translation>Primer calor de cocción en dos pasos</translation>
    </message>
    <message>
        <source>Hand washing</source>
        <translation>Lavado de manos</translation>
    </message>
    <message>
        <source>Of that, rubbing with soap</source>
        <translation>De eso, frotar con jabón</translation>
    </message>
    <message>
        <source>Chlorine sanitizer on a surface</source>
        <translation>Desinfectante con cloro en la superficie</translation>
    </message>
    <message>
        <source>Other sanitizer on a surface</source>
        <translation>Otro desinfectante en la superficie</translation>
    </message>
    <message>
        <source>Held food measured every</source>
        <translation>Comida en espera medida cada</translation>
    </message>
    <message>
        <source>Longest time without a reading</source>
        <translation>Tiempo más largo sin lectura</translation>
    </message>
    <message>
        <source>Signed by %1 at %2</source>
        <translation>Firmado por %1 a las %2</translation>
    </message>
    <message>
        <source>Not to be signed yet: readings out of limit without an action: %1</source>
        <translation>Aún no se puede firmar: lecturas fuera de límite sin acción: %1</translation>
    </message>
    <message>
        <source>Not to be signed yet: pans to discard first: %1</source>
        <translation>Aún no se puede firmar: charolas por desechar primero: %1</translation>
    </message>
    <message>
        <source>The record may be signed. What is written later needs a new signature.</source>
        <translation>El registro se puede firmar. Lo que se anote después requiere otra firma.</translation>
    </message>
    <message>
        <source>%1 or longer</source>
        <translation>%1 o más</translation>
    </message>
    <message>
        <source>%1 or shorter</source>
        <translation>%1 o menos</translation>
    </message>
    <message>
        <source>Every entry is as it was written.</source>
        <translation>Cada anotación está como se escribió.</translation>
    </message>
    <message>
        <source>Entry %1 is not the one that was written. Compare with another device&apos;s copy.</source>
        <translation>La anotación %1 no es la que se escribió. Compare con la copia de otro aparato.</translation>
    </message>
    <message>
        <source>Before entry %1 something is gone. Compare with another device&apos;s copy.</source>
        <translation>Antes de la anotación %1 falta algo. Compare con la copia de otro aparato.</translation>
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
        <source>Why is it amended?</source>
        <translation>¿Por qué se corrige?</translation>
    </message>
    <message>
        <source>%1 is out of limit.</source>
        <translation>%1 está fuera de límite.</translation>
    </message>
    <message>
        <source>What will you do?</source>
        <translation>¿Qué hará?</translation>
    </message>
    <message>
        <source>Ice point</source>
        <translation>Punto de hielo</translation>
    </message>
    <message>
        <source>Amends: %1</source>
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
        <source>a time limit starts, then discard</source>
        <translation>empieza un límite de tiempo; después, desechar</translation>
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
        <translation>Mantenga pulsado para desechar</translation>
    </message>
    <message>
        <source>City health department</source>
        <translation>Salubridad de la ciudad</translation>
    </message>
    <message>
        <source>County health department</source>
        <translation>Salubridad del condado</translation>
    </message>
    <message>
        <source>State health department</source>
        <translation>Salubridad del estado</translation>
    </message>
    <message>
        <source>Our own house rule</source>
        <translation>Regla de la casa</translation>
    </message>
    <message>
        <source>Whose rule is it?</source>
        <translation>¿De quién es la regla?</translation>
    </message>
    <message>
        <source>Stricter than published</source>
        <translation>Más estricto que lo publicado</translation>
    </message>
    <message>
        <source>Kept at %1 or above for %2 or longer</source>
        <translation>Mantenida a %1 o más durante %2 o más</translation>
    </message>
    <message>
        <source>Whole roasts only: %1</source>
        <translation>Solo asados enteros: %1</translation>
    </message>
    <message>
        <source>Not that long</source>
        <translation>No tanto tiempo</translation>
    </message>
    <message>
        <source>Asks what you will do</source>
        <translation>Pregunta qué hará</translation>
    </message>
    <message>
        <source>%1 is below the limit. Was it kept there long enough?</source>
        <translation>%1 está por debajo del límite. ¿Se mantuvo ahí el tiempo suficiente?</translation>
    </message>
    <message>
        <source>No longer kept hot or cold</source>
        <translation>Ya no se mantiene caliente ni frío</translation>
    </message>
    <message>
        <source>Out of none of them</source>
        <translation>De ninguna de ellas</translation>
    </message>
    <message>
        <source>It came in this pan, and nobody has measured it yet</source>
        <translation>Llegó en esta charola y nadie la ha medido todavía</translation>
    </message>
    <message>
        <source>It is frozen</source>
        <translation>Está congelado</translation>
    </message>
    <message>
        <source>It nearly boils</source>
        <translation>Está casi hirviendo</translation>
    </message>
    <message>
        <source>The other scale</source>
        <translation>La otra escala</translation>
    </message>
    <message>
        <source>%1, out of pan %2</source>
        <translation>%1, de la charola %2</translation>
    </message>
    <message>
        <source>Out of which pan was it filled?</source>
        <translation>¿De qué charola se llenó?</translation>
    </message>
    <message>
        <source>%1: is that the scale it was read on?</source>
        <translation>%1: ¿es la escala en que se leyó?</translation>
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
        <translation>anulado enseguida; no cuenta</translation>
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
    <message>
        <source>Left over: %1</source>
        <translation>Sobrante: %1</translation>
    </message>
    <message>
        <source>Kept at %1</source>
        <translation>Guardado a las %1</translation>
    </message>
    <message>
        <source>Measure: %1</source>
        <translation>Medir: %1</translation>
    </message>
    <message>
        <source>%1, kept %2</source>
        <translation>%1, mantenida %2</translation>
    </message>
    <message>
        <source>replaced by %1; does not count</source>
        <translation>reemplazado por %1; no cuenta</translation>
    </message>
    <message>
        <source>%1: %2, out of limit. Say what you do.</source>
        <translation>%1: %2, fuera de límite. Diga qué hace.</translation>
    </message>
    <message>
        <source>%1: out of limit. Say what you do.</source>
        <translation>%1: fuera de límite. Diga qué hace.</translation>
    </message>
    <message numerus="yes">
        <source>And %n more.</source>
        <translation>
            <numerusform>Y %n más.</numerusform>
            <numerusform>Y %n más.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, filled out of pan %2</source>
        <translation>%1, llenada de la charola %2</translation>
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
        <source>%1, pans %2</source>
        <translation>%1, charolas %2</translation>
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
        <translation>Cocción completa</translation>
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
        <translation>Mantenido en caliente</translation>
    </message>
    <message>
        <source>Held cold</source>
        <translation>Mantenido en frío</translation>
    </message>
    <message>
        <source>Cooling</source>
        <translation>Enfriando</translation>
    </message>
    <message>
        <source>Cook on, then measure again</source>
        <translation>Dejar más tiempo al fuego y medir otra vez</translation>
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
    <message>
        <source>From hot holding, %1</source>
        <translation>Al salir del calor, %1</translation>
    </message>
    <message>
        <source>From cold holding, %1</source>
        <translation>Al salir del frío, %1</translation>
    </message>
    <message>
        <source>Freshly cut or opened, %1</source>
        <translation>Recién cortado o abierto, %1</translation>
    </message>
    <message>
        <source>From cold holding, %1, measured all along</source>
        <translation>Al salir del frío, %1, midiendo todo el tiempo</translation>
    </message>
</context>
<context>
    <name>cinder::face::KitFields</name>
    <message>
        <source>Grates</source>
        <translation>Parrillas</translation>
    </message>
    <message>
        <source>A grate</source>
        <translation>Una parrilla</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Agregar</translation>
    </message>
    <message>
        <source>Grate</source>
        <translation>Parrilla</translation>
    </message>
    <message>
        <source>Equipment</source>
        <translation>Equipo</translation>
    </message>
    <message>
        <source>A piece of equipment</source>
        <translation>Una pieza de equipo</translation>
    </message>
    <message>
        <source>Tables</source>
        <translation>Mesas</translation>
    </message>
    <message>
        <source>A table</source>
        <translation>Una mesa</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Mesa</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Largo</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Ancho</translation>
    </message>
    <message>
        <source>Cool side, no pieces on it</source>
        <translation>Lado frío, sin piezas</translation>
    </message>
    <message>
        <source>Between pieces</source>
        <translation>Entre piezas</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Leave it at home</source>
        <translation>Dejarlo en casa</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Cuántos</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Qué es</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
</context>
<context>
    <name>cinder::face::LibraryFields</name>
    <message>
        <source>From your events</source>
        <translation>De sus eventos</translation>
    </message>
    <message>
        <source>%1; changed %2 times</source>
        <translation>%1; cambió %2 veces</translation>
    </message>
    <message>
        <source>%1; changed once</source>
        <translation>%1; cambió una vez</translation>
    </message>
    <message>
        <source>On the menu</source>
        <translation>En el menú</translation>
    </message>
    <message>
        <source>Learnt on %1</source>
        <translation>Aprendido el %1</translation>
    </message>
    <message>
        <source>As first cooked on %1</source>
        <translation>Como se hizo primero el %1</translation>
    </message>
    <message>
        <source>As changed for %1</source>
        <translation>Como se cambió para el %1</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Agregar</translation>
    </message>
    <message>
        <source>1 event, on %1</source>
        <translation>1 evento, el %1</translation>
    </message>
    <message>
        <source>%1 events, the last on %2</source>
        <translation>%1 eventos, el último el %2</translation>
    </message>
    <message>
        <source>%1 %2, before %3</source>
        <translation>%1 %2, antes %3</translation>
    </message>
    <message>
        <source>%1 of 100 take it, before %2</source>
        <translation>lo toman %1 de 100, antes %2</translation>
    </message>
    <message>
        <source>pulled by doneness</source>
        <translation>se saca por término</translation>
    </message>
    <message>
        <source>pulled at %1</source>
        <translation>se saca a %1</translation>
    </message>
    <message>
        <source>%1 steps, before %2</source>
        <translation>pasos: %1, antes %2</translation>
    </message>
    <message>
        <source>Contains: %1</source>
        <translation>Contiene: %1</translation>
    </message>
</context>
<context>
    <name>cinder::face::LineView</name>
    <message>
        <source>Card: no declared allergen</source>
        <translation>Tarjeta: ningún alérgeno declarado</translation>
    </message>
    <message>
        <source>Card: contains %1</source>
        <translation>Tarjeta: contiene %1</translation>
    </message>
    <message>
        <source>suits %1</source>
        <translation>apto para %1</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>table %1</source>
        <translation>mesa %1</translation>
    </message>
    <message>
        <source>on a riser</source>
        <translation>sobre un elevador</translation>
    </message>
    <message>
        <source>waits: no room</source>
        <translation>espera: sin lugar</translation>
    </message>
    <message>
        <source>Table %1 · %2</source>
        <translation>Mesa %1 · %2</translation>
    </message>
    <message>
        <source>No tables stand where the dishes are loaded: put some in the kit.</source>
        <translation>No hay mesas donde se cargan los platos: agregue mesas al equipo.</translation>
    </message>
    <message>
        <source>Short by %1: one table more would do.</source>
        <translation>Faltan %1: bastaría una mesa más.</translation>
    </message>
    <message>
        <source>Short by %1: %2 tables more would do.</source>
        <translation>Faltan %1: bastarían %2 mesas más.</translation>
    </message>
    <message>
        <source>Everything has room: %1 of %2.</source>
        <translation>Todo cabe: %1 de %2.</translation>
    </message>
</context>
<context>
    <name>cinder::face::ListWords</name>
    <message>
        <source>how it is served</source>
        <translation>cómo se sirve</translation>
    </message>
    <message>
        <source>how many guests take it</source>
        <translation>cuántos invitados lo toman</translation>
    </message>
    <message>
        <source>what it is made of</source>
        <translation>de qué está hecho</translation>
    </message>
    <message>
        <source>the yield</source>
        <translation>el rendimiento</translation>
    </message>
    <message>
        <source>what it stands in</source>
        <translation>en qué recipiente va</translation>
    </message>
    <message>
        <source>the size of its pan</source>
        <translation>el tamaño de su charola</translation>
    </message>
    <message>
        <source>the depth of its pan</source>
        <translation>la profundidad de su charola</translation>
    </message>
    <message>
        <source>what its vessel holds</source>
        <translation>cuánto cabe en su recipiente</translation>
    </message>
    <message>
        <source>the length of its vessel</source>
        <translation>el largo de su recipiente</translation>
    </message>
    <message>
        <source>the width of its vessel</source>
        <translation>el ancho de su recipiente</translation>
    </message>
    <message>
        <source>what a litre of it weighs</source>
        <translation>cuánto pesa un litro</translation>
    </message>
    <message>
        <source>what a piece weighs</source>
        <translation>cuánto pesa una pieza</translation>
    </message>
    <message>
        <source>its pieces</source>
        <translation>sus piezas</translation>
    </message>
    <message>
        <source>its share of the dish</source>
        <translation>su parte del plato</translation>
    </message>
    <message>
        <source>the portion</source>
        <translation>la porción</translation>
    </message>
    <message>
        <source>a child&apos;s portion</source>
        <translation>la porción infantil</translation>
    </message>
    <message>
        <source>seconds</source>
        <translation>las segundas porciones</translation>
    </message>
    <message>
        <source>how long the line is open</source>
        <translation>cuánto tiempo está abierta la línea</translation>
    </message>
    <message>
        <source>time kept on the road</source>
        <translation>el margen de viaje</translation>
    </message>
    <message>
        <source>the travel time</source>
        <translation>el tiempo de viaje</translation>
    </message>
    <message>
        <source>the arrival</source>
        <translation>la llegada</translation>
    </message>
    <message>
        <source>how many there are</source>
        <translation>cuántos hay</translation>
    </message>
    <message>
        <source>how many it is given</source>
        <translation>cuántos se le dan</translation>
    </message>
    <message>
        <source>the tables of the line</source>
        <translation>las mesas de la línea</translation>
    </message>
    <message>
        <source>when it is done in the kitchen</source>
        <translation>cuándo se termina en la cocina</translation>
    </message>
    <message>
        <source>your own figure</source>
        <translation>su propia cifra</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Equipo</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Guests</source>
        <translation>Invitados</translation>
    </message>
    <message>
        <source>The event</source>
        <translation>El evento</translation>
    </message>
    <message>
        <source>stands in the event: %1</source>
        <translation>está en el evento: %1</translation>
    </message>
    <message>
        <source>common practice - no source</source>
        <translation>práctica común - sin fuente</translation>
    </message>
    <message>
        <source>common practice: %1</source>
        <translation>práctica común: %1</translation>
    </message>
    <message>
        <source>from memory, not verified</source>
        <translation>de memoria, sin verificar</translation>
    </message>
    <message>
        <source>from memory, not verified: %1</source>
        <translation>de memoria, sin verificar: %1</translation>
    </message>
    <message>
        <source>a value</source>
        <translation>un valor</translation>
    </message>
    <message>
        <source>%1: say %2</source>
        <translation>%1: falta %2</translation>
    </message>
    <message>
        <source>%1: %2 is %3, right would be %4</source>
        <translation>%1: %2 es %3, lo correcto sería %4</translation>
    </message>
    <message>
        <source>%1: %2 does not fit the rest (%3)</source>
        <translation>%1: %2 no concuerda con lo demás (%3)</translation>
    </message>
    <message>
        <source>1 guest</source>
        <translation>1 invitado</translation>
    </message>
    <message>
        <source>%1 guests, no children</source>
        <translation>%1 invitados, sin niños</translation>
    </message>
    <message>
        <source>%1 guests, 1 of them a child</source>
        <translation>%1 invitados, 1 de ellos niño</translation>
    </message>
    <message>
        <source>%1 guests, %2 of them children</source>
        <translation>%1 invitados, %2 de ellos niños</translation>
    </message>
</context>
<context>
    <name>cinder::face::Load</name>
    <message>
        <source>%1 missing</source>
        <translation>%1 de menos</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>%1 of %2 back in the van</source>
        <translation>%1 de %2 de vuelta en la camioneta</translation>
    </message>
    <message>
        <source>%1 of %2 in the van</source>
        <translation>%1 de %2 en la camioneta</translation>
    </message>
    <message>
        <source>Missing: %1</source>
        <translation>Falta: %1</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>Leave by %1</source>
        <translation>Salir a más tardar %1</translation>
    </message>
    <message>
        <source>When to leave is not known: say arrival, travel and time kept on the road.</source>
        <translation>No se sabe cuándo salir: indique llegada, viaje y margen.</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>como máximo %1</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>como mínimo %1</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>a más tardar %1</translation>
    </message>
    <message>
        <source>all the time</source>
        <translation>todo el tiempo</translation>
    </message>
    <message>
        <source>%1 %2 (%3)</source>
        <translation>%1 %2 (%3)</translation>
    </message>
    <message>
        <source>begin by %1, done by %2</source>
        <translation>empezar a más tardar %1, listo a más tardar %2</translation>
    </message>
    <message>
        <source>done by %1</source>
        <translation>listo a más tardar %1</translation>
    </message>
    <message>
        <source>then: %1</source>
        <translation>después: %1</translation>
    </message>
</context>
<context>
    <name>cinder::face::MenuFields</name>
    <message>
        <source>Nothing on the menu yet: take dishes from the library, or write one of your own.</source>
        <translation>El menú está vacío: tome platos del recetario o escriba uno propio.</translation>
    </message>
    <message>
        <source>Add from the library</source>
        <translation>Agregar del recetario</translation>
    </message>
    <message>
        <source>A dish of your own</source>
        <translation>Un plato propio</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Agregar</translation>
    </message>
    <message>
        <source>New dish</source>
        <translation>Plato nuevo</translation>
    </message>
    <message>
        <source>Prepare</source>
        <translation>Preparar</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Pasos</translation>
    </message>
    <message>
        <source>One step more</source>
        <translation>Un paso más</translation>
    </message>
    <message>
        <source>New step</source>
        <translation>Paso nuevo</translation>
    </message>
    <message>
        <source>A second dish like this</source>
        <translation>Otro plato como este</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Copiar</translation>
    </message>
    <message>
        <source>Take off the menu</source>
        <translation>Quitar del menú</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>On the line</source>
        <translation>En la línea</translation>
    </message>
    <message>
        <source>In the eyes of the food code</source>
        <translation>Según el código alimentario</translation>
    </message>
    <message>
        <source>Contains</source>
        <translation>Contiene</translation>
    </message>
    <message>
        <source>No allergen is noted. Unknown is not none: read every label.</source>
        <translation>No hay alérgenos anotados. No saber no es que no haya: lea cada etiqueta.</translation>
    </message>
    <message>
        <source>Fits these diets</source>
        <translation>Va con estas dietas</translation>
    </message>
    <message>
        <source>Pull at, in the middle</source>
        <translation>Sacar a, en el centro</translation>
    </message>
    <message>
        <source>On the plate and on the line</source>
        <translation>En el plato y en la línea</translation>
    </message>
    <message>
        <source>Pieces in a portion</source>
        <translation>Piezas por porción</translation>
    </message>
    <message>
        <source>A portion</source>
        <translation>Una porción</translation>
    </message>
    <message>
        <source>Guests who take it</source>
        <translation>Invitados que lo toman</translation>
    </message>
    <message>
        <source>A child&apos;s portion</source>
        <translation>Porción de niño</translation>
    </message>
    <message>
        <source>Seconds</source>
        <translation>Segundas porciones</translation>
    </message>
    <message>
        <source>It stands in</source>
        <translation>Va en</translation>
    </message>
    <message>
        <source>Pan</source>
        <translation>Charola</translation>
    </message>
    <message>
        <source>Depth of the pan</source>
        <translation>Profundidad de la charola</translation>
    </message>
    <message>
        <source>It holds</source>
        <translation>Le caben</translation>
    </message>
    <message>
        <source>Along the table</source>
        <translation>A lo largo de la mesa</translation>
    </message>
    <message>
        <source>Across the table</source>
        <translation>A lo ancho de la mesa</translation>
    </message>
    <message>
        <source>Meat</source>
        <translation>Carne</translation>
    </message>
    <message>
        <source>How far it is taken</source>
        <translation>Término</translation>
    </message>
    <message>
        <source>%1, pulled at %2</source>
        <translation>%1, se saca a %2</translation>
    </message>
    <message>
        <source>Own temperature</source>
        <translation>Temperatura propia</translation>
    </message>
    <message>
        <source>The target lies below it: only a thermometer tells whether a piece reached it.</source>
        <translation>La meta está por debajo: solo un termómetro dice si una pieza lo alcanzó.</translation>
    </message>
</context>
<context>
    <name>cinder::face::NameFields</name>
    <message>
        <source>Skills</source>
        <translation>Habilidades</translation>
    </message>
    <message>
        <source>A skill</source>
        <translation>Una habilidad</translation>
    </message>
    <message>
        <source>One skill more</source>
        <translation>Una habilidad más</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Agregar</translation>
    </message>
    <message>
        <source>New skill</source>
        <translation>Nueva habilidad</translation>
    </message>
    <message>
        <source>Where work is done</source>
        <translation>Dónde se trabaja</translation>
    </message>
    <message>
        <source>A place</source>
        <translation>Un lugar</translation>
    </message>
    <message>
        <source>One place more</source>
        <translation>Un lugar más</translation>
    </message>
    <message>
        <source>New place</source>
        <translation>Nuevo lugar</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>Quitar %1</translation>
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
    <message>
        <source>At least %1. Is that %2?</source>
        <translation>Al menos %1. ¿Son %2?</translation>
    </message>
    <message>
        <source>At most %1. Is that %2?</source>
        <translation>Como máximo %1. ¿Son %2?</translation>
    </message>
</context>
<context>
    <name>cinder::face::Papers</name>
    <message>
        <source>Purchase list</source>
        <translation>Lista de compras</translation>
    </message>
    <message>
        <source>Pack list</source>
        <translation>Lista de carga</translation>
    </message>
    <message>
        <source>Kitchen</source>
        <translation>Cocina</translation>
    </message>
    <message>
        <source>Run sheet</source>
        <translation>Hoja de ruta</translation>
    </message>
    <message>
        <source>Buffet plan</source>
        <translation>Plano del bufé</translation>
    </message>
    <message>
        <source>Dish cards</source>
        <translation>Tarjetas de platos</translation>
    </message>
    <message>
        <source>Temperature record</source>
        <translation>Registro de temperaturas</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Escrito: %1</translation>
    </message>
    <message>
        <source>Not written: %1. %2</source>
        <translation>No se escribió: %1. %2</translation>
    </message>
    <message>
        <source>This device writes no files.</source>
        <translation>Este aparato no escribe archivos.</translation>
    </message>
</context>
<context>
    <name>cinder::face::PartFields</name>
    <message>
        <source>Pieces</source>
        <translation>Piezas</translation>
    </message>
    <message>
        <source>For a hundred guests</source>
        <translation>Para cien invitados</translation>
    </message>
    <message>
        <source>In all</source>
        <translation>En total</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Largo</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Ancho</translation>
    </message>
    <message>
        <source>Width of the thin end</source>
        <translation>Ancho de la punta</translation>
    </message>
    <message>
        <source>Weight of one, raw</source>
        <translation>Peso de una, cruda</translation>
    </message>
    <message>
        <source>A thickness</source>
        <translation>Un grosor</translation>
    </message>
    <message>
        <source>%1: thickness</source>
        <translation>%1: grosor</translation>
    </message>
    <message>
        <source>%1: share of all pieces</source>
        <translation>%1: parte de las piezas</translation>
    </message>
    <message>
        <source>%1: none of these</source>
        <translation>%1: ninguna de estas</translation>
    </message>
    <message>
        <source>One thickness more</source>
        <translation>Un grosor más</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Agregar</translation>
    </message>
    <message>
        <source>Thicker pieces</source>
        <translation>Piezas más gruesas</translation>
    </message>
    <message>
        <source>Ingredients</source>
        <translation>Ingredientes</translation>
    </message>
    <message>
        <source>One ingredient more</source>
        <translation>Un ingrediente más</translation>
    </message>
    <message>
        <source>New ingredient</source>
        <translation>Nuevo ingrediente</translation>
    </message>
    <message>
        <source>An ingredient</source>
        <translation>Un ingrediente</translation>
    </message>
    <message>
        <source>%1: share of the dish</source>
        <translation>%1: parte del plato</translation>
    </message>
    <message>
        <source>%1: none of it</source>
        <translation>%1: nada de esto</translation>
    </message>
    <message>
        <source>%1: ready of bought</source>
        <translation>%1: listo de lo comprado</translation>
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
        <translation>La cuadrilla puede llegar hasta las %1.</translation>
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
        <source>Weakest link: %1, %2.</source>
        <translation>Punto más débil: %1, %2.</translation>
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
    <message>
        <source>Line, in serving order</source>
        <translation>Línea, en orden de servicio</translation>
    </message>
    <message>
        <source>table %1</source>
        <translation>mesa %1</translation>
    </message>
    <message>
        <source>riser</source>
        <translation>elevador</translation>
    </message>
    <message>
        <source>All placed</source>
        <translation>Todo puesto</translation>
    </message>
    <message>
        <source>%1 of %2 placed</source>
        <translation>%1 de %2 puestos</translation>
    </message>
    <message>
        <source>plates first</source>
        <translation>los platos primero</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Línea</translation>
    </message>
    <message>
        <source>%1, pan %2</source>
        <translation>%1, charola %2</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 y %2 más</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Medir</translation>
    </message>
    <message>
        <source>Discard it now</source>
        <translation>Deséchelo ahora</translation>
    </message>
    <message>
        <source>To the record</source>
        <translation>Al registro</translation>
    </message>
    <message>
        <source>Start the next pan</source>
        <translation>Empezar la charola siguiente</translation>
    </message>
    <message>
        <source>To the line</source>
        <translation>A la línea</translation>
    </message>
    <message>
        <source>%1, gone</source>
        <translation>%1, ya no está</translation>
    </message>
    <message>
        <source>ends %1</source>
        <translation>termina %1</translation>
    </message>
    <message>
        <source>starts %1</source>
        <translation>empieza %1</translation>
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
        <source>8 times in 10 between %1 and %2</source>
        <translation>8 de cada 10 veces entre las %1 y las %2</translation>
    </message>
    <message>
        <source>about %1 waiting</source>
        <translation>cerca de %1 en la fila</translation>
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
        <translation>alcanza; porciones para repetir: %1</translation>
    </message>
    <message>
        <source>Start the next pan now</source>
        <translation>Prepare ya la siguiente charola</translation>
    </message>
    <message>
        <source>Start the next pan by %1</source>
        <translation>Prepare la siguiente charola a más tardar a las %1</translation>
    </message>
    <message>
        <source>Runs short: %1 portions left for %2. Serve %3 % of a portion.</source>
        <translation>No alcanza: hay %1 de las %2 porciones que hacen falta. Sirva el %3 % de la porción.</translation>
    </message>
    <message>
        <source>nobody is waiting</source>
        <translation>nadie espera</translation>
    </message>
</context>
<context>
    <name>cinder::face::StepFields</name>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Take this step out</source>
        <translation>Quitar este paso</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Qué es</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>How long</source>
        <translation>Cuánto tarda</translation>
    </message>
    <message>
        <source>Usually</source>
        <translation>Normalmente</translation>
    </message>
    <message>
        <source>At best</source>
        <translation>En el mejor caso</translation>
    </message>
    <message>
        <source>At worst</source>
        <translation>En el peor caso</translation>
    </message>
    <message>
        <source>Whose hands</source>
        <translation>Qué manos</translation>
    </message>
    <message>
        <source>Hands are on it</source>
        <translation>Manos encima</translation>
    </message>
    <message>
        <source>Skill</source>
        <translation>Habilidad</translation>
    </message>
    <message>
        <source>People at once</source>
        <translation>Personas a la vez</translation>
    </message>
    <message>
        <source>At the start, for</source>
        <translation>Al principio, durante</translation>
    </message>
    <message>
        <source>Turn every</source>
        <translation>Voltear cada</translation>
    </message>
    <message>
        <source>Putting on takes</source>
        <translation>Poner tarda</translation>
    </message>
    <message>
        <source>One turn takes</source>
        <translation>Una vuelta tarda</translation>
    </message>
    <message>
        <source>Taking off takes</source>
        <translation>Sacar tarda</translation>
    </message>
    <message>
        <source>Starts only after</source>
        <translation>Empieza solo después de</translation>
    </message>
    <message>
        <source>%1: wait at least</source>
        <translation>%1: esperar al menos</translation>
    </message>
    <message>
        <source>%1: wait at most</source>
        <translation>%1: esperar a lo sumo</translation>
    </message>
    <message>
        <source>Take the temperature every</source>
        <translation>Tomar la temperatura cada</translation>
    </message>
    <message>
        <source>Work of the day</source>
        <translation>Trabajo del día</translation>
    </message>
    <message>
        <source>No longer wait for %1</source>
        <translation>Ya no esperar: %1</translation>
    </message>
    <message>
        <source>Wait for something more</source>
        <translation>Esperar algo más</translation>
    </message>
    <message>
        <source>Wait for it</source>
        <translation>Esperarlo</translation>
    </message>
</context>
<context>
    <name>cinder::face::Strike</name>
    <message>
        <source>Not yet: %1</source>
        <translation>Todavía no: %1</translation>
    </message>
    <message>
        <source>Left out: %1. Look at the coals before you go.</source>
        <translation>Omitido: %1. Revise las brasas antes de irse.</translation>
    </message>
    <message>
        <source>All is done at the fire. Ash counts as hot for 48 hours.</source>
        <translation>Todo hecho en el fuego. La ceniza cuenta como caliente 48 horas.</translation>
    </message>
    <message>
        <source>To the record</source>
        <translation>Al registro</translation>
    </message>
    <message>
        <source>%1 may be kept</source>
        <translation>%1 para guardar</translation>
    </message>
    <message>
        <source>%1 to cool</source>
        <translation>%1 por enfriar</translation>
    </message>
    <message>
        <source>%1 to discard</source>
        <translation>%1 por desechar</translation>
    </message>
    <message>
        <source>record signed</source>
        <translation>registro firmado</translation>
    </message>
    <message>
        <source>record not signed</source>
        <translation>registro sin firmar</translation>
    </message>
    <message>
        <source>To the van</source>
        <translation>A la camioneta</translation>
    </message>
    <message>
        <source>%1 of %2 back in the van</source>
        <translation>%1 de %2 de vuelta en la camioneta</translation>
    </message>
    <message>
        <source>Everything is done</source>
        <translation>Todo está hecho</translation>
    </message>
    <message>
        <source>The site may be left.</source>
        <translation>Ya se puede dejar el lugar.</translation>
    </message>
    <message>
        <source>No step asks for it: look at the coals yourself. Ash counts as hot for 48 hours.</source>
        <translation>Ningún paso lo pide: revise usted las brasas. La ceniza cuenta como caliente 48 horas.</translation>
    </message>
    <message>
        <source>No step asks for it: look around yourself.</source>
        <translation>Ningún paso lo pide: revise usted el lugar.</translation>
    </message>
    <message>
        <source>Fire</source>
        <translation>Fuego</translation>
    </message>
    <message>
        <source>Leftovers</source>
        <translation>Sobras</translation>
    </message>
    <message>
        <source>Van</source>
        <translation>Camioneta</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Do not leave yet. Still to do: %1.</source>
        <translation>Todavía no se vayan. Pendiente: %1.</translation>
    </message>
    <message>
        <source>Left out: %1. Look around before you go.</source>
        <translation>Omitido: %1. Revise el lugar antes de irse.</translation>
    </message>
    <message>
        <source>1 pan</source>
        <translation>1 charola</translation>
    </message>
    <message>
        <source>%1 pans</source>
        <translation>%1 charolas</translation>
    </message>
    <message>
        <source>All that was asked is done. No step asks for the fire: look at the coals before you leave.</source>
        <translation>Todo lo pedido está hecho. Ningún paso pregunta por el fuego: revise las brasas antes de irse.</translation>
    </message>
</context>
<context>
    <name>cinder::face::WaysOut</name>
    <message>
        <source>Plan again</source>
        <translation>Replanificar</translation>
    </message>
    <message>
        <source>One person more from now on: %1</source>
        <translation>Una persona más desde ahora: %1</translation>
    </message>
    <message>
        <source>Leave out: %1</source>
        <translation>Omitir: %1</translation>
    </message>
    <message>
        <source>ready by the bell</source>
        <translation>listo a la campana</translation>
    </message>
    <message>
        <source>ready %1, %2 late</source>
        <translation>listo %1, %2 tarde</translation>
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
        <source>batch&#xa0;%1&#xa0;of&#xa0;%2</source>
        <translation>tanda&#xa0;%1&#xa0;de&#xa0;%2</translation>
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
        <translation>Sacado: %1</translation>
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
        <source>The journal cannot be written. Nothing is lost, nothing new is kept.</source>
        <translation>No se puede escribir el diario. Nada se pierde, nada nuevo se guarda.</translation>
    </message>
    <message>
        <source>The last touch could not be saved: the device is full. Free some space.</source>
        <translation>El último toque no se guardó: el aparato está lleno. Libere espacio.</translation>
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
        <translation>Invitados cambiados</translation>
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
        <source>%1 lb</source>
        <translation>%1 lb</translation>
    </message>
    <message>
        <source>%1 kg</source>
        <translation>%1 kg</translation>
    </message>
    <message>
        <source>%1 in</source>
        <translation>%1 in</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>The first guest steps up</source>
        <translation>Llega el primer invitado</translation>
    </message>
    <message>
        <source>%1 guests are through</source>
        <translation>Invitados que ya pasaron: %1</translation>
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
    <message>
        <source>First answer for the fire: extinguisher, clear ground, open air. Tick or skip each on the Fire board.</source>
        <translation>Primero responda por el fuego: extintor, terreno despejado, aire libre. Marque u omita cada uno en el tablero Fuego.</translation>
    </message>
    <message>
        <source>A second server at: %1</source>
        <translation>Una segunda persona sirviendo: %1</translation>
    </message>
    <message>
        <source>Guests along both sides of the tables</source>
        <translation>Invitados por los dos lados de las mesas</translation>
    </message>
    <message>
        <source>Both sides, and a second server at: %1</source>
        <translation>Los dos lados, y una segunda persona sirviendo: %1</translation>
    </message>
    <message>
        <source>Moved to the end of the line: %1</source>
        <translation>Pasar al final de la línea: %1</translation>
    </message>
    <message>
        <source>A table of its own for: %1</source>
        <translation>Una mesa aparte para: %1</translation>
    </message>
    <message>
        <source>All %1 are through in about %2.</source>
        <translation>Los %1 pasan en unos %2.</translation>
    </message>
    <message>
        <source>1 guest</source>
        <translation>1 invitado</translation>
    </message>
    <message>
        <source>%1 guests</source>
        <translation>%1 invitados</translation>
    </message>
    <message>
        <source>8 times in 10 between %1 and %2.</source>
        <translation>8 de cada 10 veces entre %1 y %2.</translation>
    </message>
    <message>
        <source>What holds them up: %1</source>
        <translation>Lo que los frena: %1</translation>
    </message>
    <message>
        <source>Guests waiting, by minutes since the first steps up</source>
        <translation>Invitados que esperan, por minutos desde el primero</translation>
    </message>
    <message>
        <source>all through %1 sooner, the longest wait %2</source>
        <translation>todos pasan %1 antes; la espera más larga, %2</translation>
    </message>
    <message>
        <source>This copy cannot be taken back; nothing was changed. Choose another one. (%1)</source>
        <translation>Esta copia no se puede recuperar; no se cambió nada. Elija otra. (%1)</translation>
    </message>
    <message>
        <source>Marked: %1</source>
        <translation>Marcado: %1</translation>
    </message>
    <message>
        <source>A lesson was answered</source>
        <translation>Se respondió una lección</translation>
    </message>
    <message>
        <source>All let go at once, the longest wait is about %1.</source>
        <translation>Si van todos a la vez, la espera más larga es de unos %1.</translation>
    </message>
    <message>
        <source>Called table by table, the next when %1 stand in line: through in about %2, the longest wait %3.</source>
        <translation>Llamados mesa por mesa, la siguiente cuando quedan %1 en la fila: pasan en unos %2, la espera más larga %3.</translation>
    </message>
    <message>
        <source>The turn is done</source>
        <translation>La vuelta está hecha</translation>
    </message>
    <message>
        <source>All %1 turns done</source>
        <translation>Todas las vueltas hechas (%1)</translation>
    </message>
    <message>
        <source>Call silenced</source>
        <translation>Aviso silenciado</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>h</source>
        <translation>h</translation>
    </message>
    <message>
        <source>This device&apos;s clock was set by %1. Countdowns and the bell go on by the old time: compare with a watch.</source>
        <translation>El reloj de este aparato se movió %1. Las cuentas y la campana siguen con la hora anterior: compare con un reloj.</translation>
    </message>
    <message>
        <source>Something else was noted while the plan was made. Touch again to plan with it.</source>
        <translation>Mientras se hacía el plan se anotó otra cosa. Toque de nuevo para planear con ella.</translation>
    </message>
    <message>
        <source>Local minimum %1 for %2</source>
        <translation>Mínimo local %1 durante %2</translation>
    </message>
    <message>
        <source>Local minimum %1</source>
        <translation>Mínimo local %1</translation>
    </message>
    <message>
        <source>Published minimum %1 for %2</source>
        <translation>Mínimo publicado %1 durante %2</translation>
    </message>
    <message>
        <source>Published minimum %1</source>
        <translation>Mínimo publicado %1</translation>
    </message>
    <message>
        <source>%1: %2 too long before what follows.</source>
        <translation>%1: %2 de más antes de lo que sigue.</translation>
    </message>
    <message>
        <source>Planned for those who are there</source>
        <translation>Planeado para quienes están</translation>
    </message>
    <message>
        <source>Nobody there could do what is still to be done.</source>
        <translation>De los que quedan nadie podría hacer lo que falta.</translation>
    </message>
    <message>
        <source>No plan was found. Leave out a dish, move the bell, or go on as it is.</source>
        <translation>No se encontró un plan. Omita un plato, mueva la campana o siga como está.</translation>
    </message>
    <message>
        <source>The plan was made for others than are there now. Plan again, or leave out a dish first.</source>
        <translation>El plan se hizo para otras personas que las que están. Replanifique u omita antes un plato.</translation>
    </message>
    <message>
        <source>The day has begun, and the event stays as it is. Move the bell on the Lead board, change who is there under Crew, figures and guests under Lists; when it gets late, leave out a dish under Promise.</source>
        <translation>El día ya empezó y el evento queda como está. Mueva la campana en el tablero Jefe, cambie quién está en Cuadrilla, y las cifras y los invitados en Listas; si se hace tarde, omita un plato en Promesa.</translation>
    </message>
    <message>
        <source>This is a rehearsal: it is played, not changed. Open the event itself to change it.</source>
        <translation>Esto es un ensayo: se juega, no se cambia. Abra el evento mismo para cambiarlo.</translation>
    </message>
    <message>
        <source>Part of the journal on this device is damaged and cannot be read; nothing was noted. Take the latest copy back on another device.</source>
        <translation>Parte del diario de este aparato está dañada y no puede leerse; no se anotó nada. Recupere la última copia en otro aparato.</translation>
    </message>
    <message>
        <source>Another program is using the journal; nothing was noted. Close it and touch again.</source>
        <translation>Otro programa está usando el diario; no se anotó nada. Ciérrelo y toque de nuevo.</translation>
    </message>
    <message>
        <source>The file cannot be made there. Check that its folder is there and can be written. (%1)</source>
        <translation>No se puede crear el archivo ahí. Compruebe que la carpeta exista y se pueda escribir. (%1)</translation>
    </message>
    <message>
        <source>A file that is no copy of this device stands there and is left as it is. Move it away, or touch again in a minute. (%1)</source>
        <translation>Ahí hay un archivo que no es copia de este aparato y se deja como está. Muévalo o toque de nuevo en un minuto. (%1)</translation>
    </message>
    <message>
        <source>Planned again</source>
        <translation>Planeado de nuevo</translation>
    </message>
    <message>
        <source>The journal cannot be written: the disk is full or write-protected. Everything can be looked at; free some space and start again.</source>
        <translation>El diario no se puede escribir: el disco está lleno o protegido. Todo puede consultarse; libere espacio y vuelva a iniciar.</translation>
    </message>
</context>
</TS>
