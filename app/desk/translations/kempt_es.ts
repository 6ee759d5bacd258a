<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es_ES">
<context>
    <name></name>
    <message>
        <source>table of readings</source>
        <translation>tabla de medidas</translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source>wet</source>
        <translation>mojado</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>seco</translation>
    </message>
    <message>
        <source>styled</source>
        <translation>peinado</translation>
    </message>
    <message>
        <source>unstyled</source>
        <translation>sin peinar</translation>
    </message>
    <message>
        <source>with product</source>
        <translation>con producto</translation>
    </message>
    <message>
        <source>no product</source>
        <translation>sin producto</translation>
    </message>
    <message>
        <source>before  %1</source>
        <translation>antes  %1</translation>
    </message>
    <message>
        <source>after  %1</source>
        <translation>después  %1</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>ayer</translation>
    </message>
    <message>
        <source>Straighten, perm</source>
        <translation>Alisar, permanente</translation>
    </message>
    <message>
        <source>Colour, lighten</source>
        <translation>Color, decolorar</translation>
    </message>
    <message>
        <source>Treat</source>
        <translation>Tratar</translation>
    </message>
    <message>
        <source>Cut, style</source>
        <translation>Cortar, peinar</translation>
    </message>
    <message>
        <source>all of it</source>
        <translation>todo</translation>
    </message>
    <message>
        <source>roots</source>
        <translation>raíces</translation>
    </message>
    <message>
        <source>mid-shaft</source>
        <translation>medios</translation>
    </message>
    <message>
        <source>ends</source>
        <translation>puntas</translation>
    </message>
    <message>
        <source>not the roots</source>
        <translation>sin las raíces</translation>
    </message>
    <message>
        <source>%1, visit of %2</source>
        <translation>%1, visita del %2</translation>
    </message>
    <message>
        <source>%1, a new visit of %2</source>
        <translation>%1, una visita nueva del %2</translation>
    </message>
    <message>
        <source>%1: you put them there.</source>
        <translation>%1: las puso usted ahí.</translation>
    </message>
    <message>
        <source>%1: photos of the same quarter of an hour are there.</source>
        <translation>%1: ahí hay fotos del mismo cuarto de hora.</translation>
    </message>
    <message>
        <source>%1: it is the visit that was open.</source>
        <translation>%1: es la visita que estaba abierta.</translation>
    </message>
    <message>
        <source>%1: her page was open.</source>
        <translation>%1: su página estaba abierta.</translation>
    </message>
    <message>
        <source>%1, as you chose.</source>
        <translation>%1, como usted eligió.</translation>
    </message>
    <message>
        <source>Nothing tells whose they are.</source>
        <translation>Nada dice de quién son.</translation>
    </message>
    <message>
        <source>years</source>
        <translation>años</translation>
    </message>
    <message>
        <source>hairs</source>
        <translation>cabellos</translation>
    </message>
    <message>
        <source>min a day</source>
        <translation>min al día</translation>
    </message>
    <message>
        <source>weeks</source>
        <translation>semanas</translation>
    </message>
    <message>
        <source>times a week</source>
        <translation>veces por semana</translation>
    </message>
    <message>
        <source>Save for a calendar</source>
        <translation>Guardar para un calendario</translation>
    </message>
    <message>
        <source>Calendar (*.ics)</source>
        <translation>Calendario (*.ics)</translation>
    </message>
    <message>
        <source>Writing the calendar file</source>
        <translation>Escribiendo el archivo de calendario</translation>
    </message>
    <message>
        <source>The calendar file could not be written: %1.</source>
        <translation>No se pudo escribir el archivo de calendario: %1.</translation>
    </message>
    <message>
        <source>The dates are still in the book.</source>
        <translation>Las fechas siguen en el libro.</translation>
    </message>
    <message>
        <source>Choose another folder.</source>
        <translation>Elija otra carpeta.</translation>
    </message>
    <message>
        <source>The dates are saved as %1.</source>
        <translation>Las fechas se guardaron como %1.</translation>
    </message>
    <message>
        <source>professionals only</source>
        <translation>solo profesionales</translation>
    </message>
    <message>
        <source>maker&apos;s directions come first</source>
        <translation>primero, las instrucciones del fabricante</translation>
    </message>
    <message>
        <source>strand test and patch test</source>
        <translation>prueba de mechón y prueba de alergia</translation>
    </message>
    <message>
        <source>burning, stinging, itching: rinse off</source>
        <translation>ardor, escozor, picor: aclarar</translation>
    </message>
    <message>
        <source>law and licence come first</source>
        <translation>primero, la ley y la licencia</translation>
    </message>
    <message>
        <source>disease, sudden or patchy loss, pain, scars: a doctor</source>
        <translation>enfermedad, caída repentina o a placas, dolor, cicatrices: al médico</translation>
    </message>
    <message>
        <source>no finding clears nothing</source>
        <translation>que nada conste no autoriza nada</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1 min a week. </source>
        <translation>%1 min por semana. </translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Fuente: %1</translation>
    </message>
    <message>
        <source>in</source>
        <translation>pulg.</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>New growth since the %1 of %2: %3 (%4 to %5), %6.</source>
        <translation>Crecimiento desde %1, %2: %3 (%4 a %5), %6.</translation>
    </message>
    <message>
        <source>measured on a photo</source>
        <translation>medido en una foto</translation>
    </message>
    <message>
        <source>from the rate of growth</source>
        <translation>según el ritmo de crecimiento</translation>
    </message>
    <message>
        <source>from %1 to the ends</source>
        <translation>de %1 a las puntas</translation>
    </message>
    <message>
        <source>from the scalp to the ends</source>
        <translation>del cuero cabelludo a las puntas</translation>
    </message>
    <message>
        <source>planned today</source>
        <translation>planeado hoy</translation>
    </message>
    <message>
        <source>0 in</source>
        <translation>0 pulg.</translation>
    </message>
    <message>
        <source>0 mm</source>
        <translation>0 mm</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 °C</source>
        <translation>%1 °C</translation>
    </message>
    <message>
        <source>only %1</source>
        <translation>solo %1</translation>
    </message>
    <message>
        <source> and </source>
        <translation> y </translation>
    </message>
    <message>
        <source>with a reaction</source>
        <translation>con reacción</translation>
    </message>
    <message>
        <source>strand test failed</source>
        <translation>prueba de mechón no superada</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Put it on %1.</source>
        <translation>Aplíquelo en %1.</translation>
    </message>
    <message>
        <source>Keep it off %1.</source>
        <translation>No lo aplique en %1.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 % under</source>
        <translation>%1 % de menos</translation>
    </message>
    <message>
        <source>%1 % over</source>
        <translation>%1 % de más</translation>
    </message>
    <message>
        <source>as needed</source>
        <translation>lo necesario</translation>
    </message>
    <message>
        <source>person %1</source>
        <translation>persona %1</translation>
    </message>
    <message>
        <source>rinse at %1</source>
        <translation>aclarar a las %1</translation>
    </message>
    <message>
        <source>0 min</source>
        <translation>0 min</translation>
    </message>
    <message>
        <source>refused</source>
        <translation>rechazada</translation>
    </message>
    <message>
        <source>covered %1</source>
        <translation>cubierto %1</translation>
    </message>
    <message>
        <source>no reading</source>
        <translation>sin medida</translation>
    </message>
    <message>
        <source>not measured yet</source>
        <translation>aún sin medir</translation>
    </message>
    <message>
        <source>nothing marked yet</source>
        <translation>aún sin marcar</translation>
    </message>
    <message>
        <source>Erase</source>
        <translation>Borrar</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>sin medir</translation>
    </message>
    <message>
        <source>There is no such camera.</source>
        <translation>No existe esa cámara.</translation>
    </message>
    <message>
        <source>The camera is not ready yet.</source>
        <translation>La cámara aún no está lista.</translation>
    </message>
    <message>
        <source>Ask</source>
        <translation>Preguntar</translation>
    </message>
    <message>
        <source>Grade</source>
        <translation>Valorar</translation>
    </message>
    <message>
        <source>Add photos…</source>
        <translation>Añadir fotos…</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Mirar</translation>
    </message>
    <message>
        <source>Draw</source>
        <translation>Dibujar</translation>
    </message>
    <message>
        <source>Write down</source>
        <translation>Anotar</translation>
    </message>
    <message>
        <source>See</source>
        <translation>Ver</translation>
    </message>
    <message>
        <source>as the camera says (UTC%1%2:%3)</source>
        <translation>según la cámara (UTC%1%2:%3)</translation>
    </message>
    <message>
        <source>by the camera’s clock</source>
        <translation>por el reloj de la cámara</translation>
    </message>
    <message>
        <source>the time of the file: the photo does not say when it was taken</source>
        <translation>la hora del archivo: la foto no dice cuándo se hizo</translation>
    </message>
    <message>
        <source>measured by tape</source>
        <translation>medido con cinta</translation>
    </message>
    <message>
        <source>%1: a guess, the only visit of that day. Take all leaves them out.</source>
        <translation>%1: una suposición, la única visita de ese día. «Aceptar» no las incluye.</translation>
    </message>
</context>
<context>
    <name>dates</name>
    <message>
        <source>d MMMM yyyy</source>
        <extracomment>How a date is written, in Qt&apos;s letters: 12 March 2026. Words of its own stand in quotes: d &apos;de&apos; MMMM</extracomment>
        <translation>d &apos;de&apos; MMMM &apos;de&apos; yyyy</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <extracomment>12 Mar 2026</extracomment>
        <translation>d MMM yyyy</translation>
    </message>
</context>
<context>
    <name>kempt::desk</name>
    <message>
        <source>%1 and %2</source>
        <translation>%1 y %2</translation>
    </message>
    <message>
        <source>%1: no photo yet.</source>
        <translation>%1: aún sin foto.</translation>
    </message>
    <message>
        <source>%1: no shot was good enough. What to do is written below it.</source>
        <translation>%1: ninguna toma sirvió. Debajo dice qué hacer.</translation>
    </message>
    <message>
        <source>%1: one shot. A second, set up anew, tells a real change from chance.</source>
        <translation>%1: una toma. Una segunda, colocando todo de nuevo, distingue un cambio real del azar.</translation>
    </message>
    <message>
        <source>%1, shot %2: waits for its edge line.</source>
        <translation>%1, toma %2: espera su línea del contorno.</translation>
    </message>
    <message>
        <source>%1, shots %2: wait for their edge lines.</source>
        <translation>%1, tomas %2: esperan sus líneas del contorno.</translation>
    </message>
    <message>
        <source>Consultation</source>
        <translation>Consulta</translation>
    </message>
    <message>
        <source>Hair and daily life were told, and still count.</source>
        <translation>Contó de su cabello y de su día a día, y aún vale.</translation>
    </message>
    <message>
        <source>Her hair was not asked about yet.</source>
        <translation>Aún no se preguntó por su cabello.</translation>
    </message>
    <message>
        <source>Her daily life was not asked about lately.</source>
        <translation>Hace tiempo que no se pregunta por su día a día.</translation>
    </message>
    <message>
        <source>Ask about her hair and her daily life.</source>
        <translation>Pregunte por su cabello y su día a día.</translation>
    </message>
    <message>
        <source>Scalp check</source>
        <translation>Revisión del cuero cabelludo</translation>
    </message>
    <message>
        <source>Looked at and graded that day.</source>
        <translation>Mirado y valorado ese día.</translation>
    </message>
    <message>
        <source>Look at the scalp before anything else, and grade it.</source>
        <translation>Mire el cuero cabelludo antes que nada, y valórelo.</translation>
    </message>
    <message>
        <source>Photographs</source>
        <translation>Fotografías</translation>
    </message>
    <message>
        <source>None yet.</source>
        <translation>Aún ninguna.</translation>
    </message>
    <message>
        <source>Every view has its shots.</source>
        <translation>Cada vista tiene sus tomas.</translation>
    </message>
    <message>
        <source>%1 so far.</source>
        <translation>%1 hasta ahora.</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>foto</translation>
    </message>
    <message>
        <source>photos</source>
        <translation>fotos</translation>
    </message>
    <message>
        <source>Every view is there; second shots are wanting.</source>
        <translation>Están todas las vistas; faltan segundas tomas.</translation>
    </message>
    <message>
        <source>Grades</source>
        <translation>Grados</translation>
    </message>
    <message>
        <source>%1 kept.</source>
        <translation>%1 guardados.</translation>
    </message>
    <message>
        <source>grade</source>
        <translation>grado</translation>
    </message>
    <message>
        <source>grades</source>
        <translation>grados</translation>
    </message>
    <message>
        <source>None yet: one key a grade.</source>
        <translation>Aún ninguno: una tecla por grado.</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Medidas</translation>
    </message>
    <message>
        <source>They come with the photographs.</source>
        <translation>Vienen con las fotografías.</translation>
    </message>
    <message>
        <source>%1 of %2 give readings.</source>
        <translation>%1 de %2 dan medidas.</translation>
    </message>
    <message>
        <source>Services</source>
        <translation>Servicios</translation>
    </message>
    <message>
        <source>%1 written down.</source>
        <translation>%1 anotados.</translation>
    </message>
    <message>
        <source>service</source>
        <translation>servicio</translation>
    </message>
    <message>
        <source>services</source>
        <translation>servicios</translation>
    </message>
    <message>
        <source>Write down what was done today, if anything was.</source>
        <translation>Anote lo que se hizo hoy, si se hizo algo.</translation>
    </message>
    <message>
        <source>Photographs afterwards</source>
        <translation>Fotografías de después</translation>
    </message>
    <message>
        <source>%1 taken later that day.</source>
        <translation>%1 tomadas más tarde ese día.</translation>
    </message>
    <message>
        <source>After a service, the same views again.</source>
        <translation>Tras un servicio, las mismas vistas otra vez.</translation>
    </message>
    <message>
        <source>The photos do not say when they were taken: whether some are of afterwards is not known.</source>
        <translation>Las fotos no dicen cuándo se hicieron: no se sabe si alguna es de después.</translation>
    </message>
    <message>
        <source>The same views again, now that the hair was worked on.</source>
        <translation>Las mismas vistas otra vez, ahora que se trabajó el cabello.</translation>
    </message>
    <message>
        <source>Next dates</source>
        <translation>Próximas fechas</translation>
    </message>
    <message>
        <source>Retouch, trim, photographs and patch test, as ranges.</source>
        <translation>Retoque, corte de puntas, fotografías y prueba de alergia, como intervalos.</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>begun</source>
        <translation>empezado</translation>
    </message>
    <message>
        <source>as needed</source>
        <translation>lo necesario</translation>
    </message>
    <message>
        <source>still to do</source>
        <translation>por hacer</translation>
    </message>
</context>
<context>
    <name>kempt::desk::AnchorButton</name>
    <message>
        <source>%1, grade %2: %3</source>
        <translation>%1, grado %2: %3</translation>
    </message>
</context>
<context>
    <name>kempt::desk::BackupLog</name>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>ayer</translation>
    </message>
    <message numerus="yes">
        <source>%n days ago</source>
        <translation>
            <numerusform>hace %n día</numerusform>
            <numerusform>hace %n días</numerusform>
        </translation>
    </message>
    <message>
        <source>no backup was made on this computer yet</source>
        <translation>aún no se ha hecho ninguna copia en este ordenador</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>The last backup of this book was made %1.</source>
        <translation>La última copia de este libro se hizo %1.</translation>
    </message>
    <message>
        <source>This book has no backup that was made on this computer.</source>
        <translation>Este libro no tiene ninguna copia hecha en este ordenador.</translation>
    </message>
    <message>
        <source>%1, backup of %2.kempt</source>
        <translation>%1, copia del %2.kempt</translation>
    </message>
</context>
<context>
    <name>kempt::desk::BeforeAfter</name>
    <message>
        <source>Before and after, one over the other</source>
        <translation>Antes y después, uno sobre otro</translation>
    </message>
    <message>
        <source>Before: %1. After: %2. Left and right move the parting between them.</source>
        <translation>Antes: %1. Después: %2. Izquierda y derecha mueven la raya entre ambas.</translation>
    </message>
</context>
<context>
    <name>kempt::desk::BookView</name>
    <message>
        <source>Open it</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Trabajando</translation>
    </message>
    <message>
        <source>Adding a client</source>
        <translation>Añadiendo una clienta</translation>
    </message>
    <message>
        <source>Let go: the photos are sorted, and you say what is taken.</source>
        <translation>Suelte: las fotos se ordenan y usted dice cuáles se aceptan.</translation>
    </message>
</context>
<context>
    <name>kempt::desk::CameraPage</name>
    <message>
        <source>Plug a camera in, see that no other program uses it, and look again. A phone takes better photos than most of them: drop its photos on this window, or let them come into the watched folder (settings).</source>
        <translation>Conecte una cámara, compruebe que ningún otro programa la usa y mire de nuevo. Un teléfono hace mejores fotos que casi todas: suelte sus fotos en esta ventana, o deje que lleguen a la carpeta vigilada (ajustes).</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Mirar de nuevo</translation>
    </message>
    <message>
        <source>Take (space)</source>
        <translation>Tomar (espacio)</translation>
    </message>
    <message>
        <source>Take a photo</source>
        <translation>Tomar una foto</translation>
    </message>
    <message>
        <source>View</source>
        <translation>Vista</translation>
    </message>
    <message>
        <source>View to take</source>
        <translation>Vista que se toma</translation>
    </message>
    <message>
        <source>Strength of the guide</source>
        <translation>Fuerza de la guía</translation>
    </message>
    <message>
        <source>Strength of the last visit’s photo over the camera’s picture</source>
        <translation>Fuerza de la foto de la última visita sobre la imagen de la cámara</translation>
    </message>
    <message>
        <source>Camera</source>
        <translation>Cámara</translation>
    </message>
    <message>
        <source>The camera: %1</source>
        <translation>La cámara: %1</translation>
    </message>
    <message>
        <source>There is no camera</source>
        <translation>No hay cámara</translation>
    </message>
    <message>
        <source>No camera was found on this computer.</source>
        <translation>No se encontró ninguna cámara en este ordenador.</translation>
    </message>
    <message>
        <source>Reading the visit</source>
        <translation>Leyendo la visita</translation>
    </message>
    <message>
        <source>Every view has its two shots.</source>
        <translation>Cada vista tiene sus dos tomas.</translation>
    </message>
    <message>
        <source>%1, shot %2</source>
        <translation>%1, toma %2</translation>
    </message>
    <message>
        <source>There is no earlier photo of this view to guide by.</source>
        <translation>No hay foto anterior de esta vista que sirva de guía.</translation>
    </message>
    <message>
        <source>The photo of %1 lies over the picture: stand so that both agree.</source>
        <translation>La foto del %1 está sobre la imagen: colóquese de modo que coincidan.</translation>
    </message>
    <message>
        <source>Opening the guide</source>
        <translation>Abriendo la guía</translation>
    </message>
    <message>
        <source>The photo could not be written: %1</source>
        <translation>No se pudo escribir la foto: %1</translation>
    </message>
    <message>
        <source>Taking the photo in</source>
        <translation>Incorporando la foto</translation>
    </message>
    <message>
        <source>%1, shot %2 is kept. Put the camera down and lay the card anew before the next.</source>
        <translation>%1, toma %2 guardada. Deje la cámara y coloque de nuevo la tarjeta antes de la siguiente.</translation>
    </message>
    <message>
        <source>Looking at a photo</source>
        <translation>Mirando una foto</translation>
    </message>
    <message>
        <source>Shot %1</source>
        <translation>Toma %1</translation>
    </message>
    <message>
        <source>The camera gave the same picture once more; it is in the book already.</source>
        <translation>La cámara dio otra vez la misma imagen; ya está en el libro.</translation>
    </message>
    <message>
        <source>The camera gave no photo. Take it again.</source>
        <translation>La cámara no dio ninguna foto. Vuelva a tomarla.</translation>
    </message>
    <message>
        <source>The photo could not be taken into the visit. It waits among the new photos. %1</source>
        <translation>La foto no se pudo guardar en la visita. Espera entre las fotos nuevas. %1</translation>
    </message>
    <message>
        <source>This photo is not in the record: it waits among the new photos. %1</source>
        <translation>Esta foto no está en la ficha: espera entre las fotos nuevas. %1</translation>
    </message>
    <message>
        <source>Shot %1 is kept, but it could not be looked at: %2</source>
        <translation>La toma %1 está guardada, pero no se pudo examinar: %2</translation>
    </message>
</context>
<context>
    <name>kempt::desk::CautionsStrip</name>
    <message>
        <source>In full</source>
        <translation>Completas</translation>
    </message>
    <message>
        <source>Spell the cautions out</source>
        <translation>Mostrar las precauciones completas</translation>
    </message>
    <message>
        <source>Always: %1</source>
        <translation>Siempre: %1</translation>
    </message>
    <message>
        <source>In brief</source>
        <translation>Resumidas</translation>
    </message>
</context>
<context>
    <name>kempt::desk::ChartView</name>
    <message>
        <source>Chart: %1 %2</source>
        <translation>Gráfico: %1 %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>, %1</source>
        <translation>, %1</translation>
    </message>
    <message>
        <source>shot</source>
        <translation>toma</translation>
    </message>
    <message>
        <source>shots</source>
        <translation>tomas</translation>
    </message>
    <message>
        <source>, not comparable</source>
        <translation>, no comparable</translation>
    </message>
</context>
<context>
    <name>kempt::desk::ClientForm</name>
    <message>
        <source>New client</source>
        <translation>Nueva clienta</translation>
    </message>
    <message>
        <source>About %1</source>
        <translation>Sobre %1</translation>
    </message>
    <message>
        <source>About this client</source>
        <translation>Sobre esta clienta</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Agrees that photos may leave this book</source>
        <translation>Acepta que las fotos salgan de este libro</translation>
    </message>
    <message>
        <source>Agreed on %1. Untick when she takes it back.</source>
        <translation>Aceptado el %1. Desmarque si lo retira.</translation>
    </message>
    <message>
        <source>Without it, reports and saved pictures leave her photos out.</source>
        <translation>Sin ello, los informes y las imágenes guardadas no llevan sus fotos.</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>Add client</source>
        <translation>Añadir clienta</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Her face in pictures that leave</source>
        <translation>Su cara en las imágenes que salen</translation>
    </message>
    <message>
        <source>not asked: found eyes are hidden</source>
        <translation>sin preguntar: se tapan los ojos encontrados</translation>
    </message>
    <message>
        <source>hidden: every photo is looked at first</source>
        <translation>tapada: antes se mira cada foto</translation>
    </message>
    <message>
        <source>may be seen</source>
        <translation>se puede ver</translation>
    </message>
</context>
<context>
    <name>kempt::desk::ClientList</name>
    <message>
        <source>Clients</source>
        <translation>Clientas</translation>
    </message>
    <message>
        <source>Find by name</source>
        <translation>Buscar por nombre</translation>
    </message>
    <message>
        <source>Find a client by a few letters of the name</source>
        <translation>Buscar una clienta por unas letras del nombre</translation>
    </message>
    <message>
        <source>New client</source>
        <translation>Nueva clienta</translation>
    </message>
    <message>
        <source>Reading the clients</source>
        <translation>Leyendo las clientas</translation>
    </message>
    <message>
        <source>%1, last %2</source>
        <translation>%1, última %2</translation>
    </message>
    <message>
        <source>visit</source>
        <translation>visita</translation>
    </message>
    <message>
        <source>visits</source>
        <translation>visitas</translation>
    </message>
    <message>
        <source>no visit yet</source>
        <translation>aún sin visitas</translation>
    </message>
    <message>
        <source>Nobody is in this book yet.</source>
        <translation>Todavía no hay nadie en este libro.</translation>
    </message>
    <message>
        <source>No name here has “%1” in it.</source>
        <translation>Ningún nombre contiene «%1».</translation>
    </message>
</context>
<context>
    <name>kempt::desk::ClientPage</name>
    <message>
        <source>New visit</source>
        <translation>Nueva visita</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Plan: what can this hair take today</source>
        <translation>Plan: qué admite hoy este cabello</translation>
    </message>
    <message>
        <source>Before and after</source>
        <translation>Antes y después</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Informe</translation>
    </message>
    <message>
        <source>Hair and days</source>
        <translation>Cabello y día a día</translation>
    </message>
    <message>
        <source>Hair and days: what she told of her hair and her daily life</source>
        <translation>Cabello y día a día: lo que contó de su cabello y de su vida diaria</translation>
    </message>
    <message>
        <source>More about this client</source>
        <translation>Más sobre esta clienta</translation>
    </message>
    <message>
        <source>Change name, note or consent</source>
        <translation>Cambiar nombre, nota o consentimiento</translation>
    </message>
    <message>
        <source>Erase this client…</source>
        <translation>Borrar esta clienta…</translation>
    </message>
    <message>
        <source>Visits</source>
        <translation>Visitas</translation>
    </message>
    <message>
        <source>Reading the client</source>
        <translation>Leyendo la clienta</translation>
    </message>
    <message>
        <source>since %1</source>
        <translation>desde el %1</translation>
    </message>
    <message>
        <source>visit</source>
        <translation>visita</translation>
    </message>
    <message>
        <source>visits</source>
        <translation>visitas</translation>
    </message>
    <message>
        <source>photos may leave the book</source>
        <translation>las fotos pueden salir del libro</translation>
    </message>
    <message>
        <source>photos stay in the book</source>
        <translation>las fotos se quedan en el libro</translation>
    </message>
    <message>
        <source>No visit yet. “New visit” opens one for today, ready for photos.</source>
        <translation>Aún no hay visitas. «Nueva visita» abre una para hoy, lista para las fotos.</translation>
    </message>
    <message>
        <source>Open the visit of %1</source>
        <translation>Abrir la visita del %1</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>foto</translation>
    </message>
    <message>
        <source>photos</source>
        <translation>fotos</translation>
    </message>
    <message>
        <source>covered %1</source>
        <translation>cubierto %1</translation>
    </message>
    <message>
        <source>Opening a visit</source>
        <translation>Abriendo una visita</translation>
    </message>
    <message>
        <source>Keeping the client</source>
        <translation>Guardando la clienta</translation>
    </message>
    <message>
        <source>Erase %1 with every visit, photo and reading?</source>
        <translation>¿Borrar a %1 con todas sus visitas, fotos y medidas?</translation>
    </message>
    <message>
        <source>This cannot be taken back. Backups of the book that you made earlier still hold her: erase those yourself.</source>
        <translation>No se puede deshacer. Las copias del libro que hizo antes aún la contienen: bórrelas usted.</translation>
    </message>
    <message>
        <source>Erasing a client</source>
        <translation>Borrando una clienta</translation>
    </message>
    <message>
        <source>Earlier visits (%1 more)</source>
        <translation>Visitas anteriores (%1 más)</translation>
    </message>
</context>
<context>
    <name>kempt::desk::ClientPicker</name>
    <message>
        <source>Whose photos are these?</source>
        <translation>¿De quién son estas fotos?</translation>
    </message>
    <message>
        <source>Adding a client</source>
        <translation>Añadiendo una clienta</translation>
    </message>
</context>
<context>
    <name>kempt::desk::ComparePage</name>
    <message>
        <source>View</source>
        <translation>Vista</translation>
    </message>
    <message>
        <source>View to compare</source>
        <translation>Vista que se compara</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Antes</translation>
    </message>
    <message>
        <source>Visit before</source>
        <translation>Visita de antes</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Después</translation>
    </message>
    <message>
        <source>Visit after</source>
        <translation>Visita de después</translation>
    </message>
    <message>
        <source>Save the picture…</source>
        <translation>Guardar la imagen…</translation>
    </message>
    <message>
        <source>Parting between before and after</source>
        <translation>Raya entre antes y después</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Leyendo…</translation>
    </message>
    <message>
        <source>Reading the visits</source>
        <translation>Leyendo las visitas</translation>
    </message>
    <message>
        <source>Before and after</source>
        <translation>Antes y después</translation>
    </message>
    <message>
        <source>She has not agreed that photos leave the book.</source>
        <translation>No ha aceptado que las fotos salgan del libro.</translation>
    </message>
    <message>
        <source>Laying the photos over each other</source>
        <translation>Superponiendo las fotos</translation>
    </message>
    <message>
        <source>Both at one scale.</source>
        <translation>Ambas a la misma escala.</translation>
    </message>
    <message>
        <source>Save the picture</source>
        <translation>Guardar la imagen</translation>
    </message>
    <message>
        <source>PNG picture (*.png)</source>
        <translation>Imagen PNG (*.png)</translation>
    </message>
    <message>
        <source>Saving the picture</source>
        <translation>Guardando la imagen</translation>
    </message>
    <message>
        <source>The picture is saved as %1.</source>
        <translation>La imagen se guardó como %1.</translation>
    </message>
    <message>
        <source>Drawn lines</source>
        <translation>Líneas dibujadas</translation>
    </message>
    <message>
        <source>Show the drawn lines</source>
        <translation>Mostrar las líneas dibujadas</translation>
    </message>
    <message>
        <source>Right side in a mirror</source>
        <translation>Lado derecho en espejo</translation>
    </message>
    <message>
        <source>Eyes…</source>
        <translation>Ojos…</translation>
    </message>
    <message>
        <source>Eyes in the pictures</source>
        <translation>Ojos en las imágenes</translation>
    </message>
    <message>
        <source>Parting</source>
        <translation>Raya</translation>
    </message>
    <message>
        <source>Taking turns</source>
        <translation>Alternando</translation>
    </message>
    <message>
        <source>Where the edge went</source>
        <translation>Adónde fue el contorno</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation>Una al lado de otra</translation>
    </message>
    <message>
        <source>All visits</source>
        <translation>Todas las visitas</translation>
    </message>
    <message>
        <source>Left and right temple</source>
        <translation>Sien izquierda y derecha</translation>
    </message>
    <message>
        <source>Nothing to compare yet.
Take photos of one view at two visits, and both stand here at one scale; with an edge line or anchors drawn on them they are laid over each other.</source>
        <translation>Aún no hay nada que comparar.
Haga fotos de una vista en dos visitas y ambas aparecerán aquí a la misma escala; con una línea del contorno o puntos de anclaje dibujados se superponen.</translation>
    </message>
    <message>
        <source>left  %1</source>
        <translation>izquierda  %1</translation>
    </message>
    <message>
        <source>right  %1</source>
        <translation>derecha  %1</translation>
    </message>
    <message>
        <source>She does not want her face seen: look at both photos under “Eyes” before they leave.</source>
        <translation>No quiere que se le vea la cara: mire las dos fotos en «Ojos» antes de que salgan.</translation>
    </message>
    <message>
        <source>Left and right are two places.</source>
        <translation>Izquierda y derecha son dos lugares.</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Izquierda</translation>
    </message>
    <message>
        <source>Laid over</source>
        <translation>Superpuestas</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Derecha</translation>
    </message>
</context>
<context>
    <name>kempt::desk::DatesPanel</name>
    <message>
        <source>Next dates</source>
        <translation>Próximas fechas</translation>
    </message>
    <message>
        <source>Save for a calendar…</source>
        <translation>Guardar para un calendario…</translation>
    </message>
    <message>
        <source>with her name</source>
        <translation>con su nombre</translation>
    </message>
    <message>
        <source>The calendar file carries the client&apos;s name</source>
        <translation>El archivo de calendario lleva el nombre de la clienta</translation>
    </message>
    <message>
        <source>The file leaves the book. Without the name it says the client&apos;s number.</source>
        <translation>El archivo sale del libro. Sin el nombre lleva el número de la clienta.</translation>
    </message>
    <message>
        <source>%1: its last day has passed</source>
        <translation>%1: su último día ya pasó</translation>
    </message>
    <message>
        <source>Likeliest %1.</source>
        <translation>Lo más probable, el %1.</translation>
    </message>
    <message>
        <source>%1 Source: %2</source>
        <translation>%1 Fuente: %2</translation>
    </message>
    <message>
        <source>None yet. Dates are counted from services and photos that are in the book.</source>
        <translation>Aún ninguna. Las fechas se cuentan a partir de los servicios y fotos que hay en el libro.</translation>
    </message>
    <message>
        <source>There are no dates to save yet.</source>
        <translation>Aún no hay fechas que guardar.</translation>
    </message>
    <message>
        <source>dates %1.ics</source>
        <translation>fechas %1.ics</translation>
    </message>
</context>
<context>
    <name>kempt::desk::DayField</name>
    <message>
        <source>like May 2020</source>
        <translation>como mayo 2020</translation>
    </message>
    <message>
        <source>like 4 May 2026</source>
        <translation>como 4 mayo 2026</translation>
    </message>
    <message>
        <source>That day is still to come. What was kept before stays.</source>
        <translation>Ese día aún no ha llegado. Lo guardado antes permanece.</translation>
    </message>
    <message>
        <source>No day can be read yet. What was kept before stays; write the month as a word.</source>
        <translation>Aún no se lee ningún día. Lo guardado antes permanece; escriba el mes con letras.</translation>
    </message>
</context>
<context>
    <name>kempt::desk::DaysPanel</name>
    <message>
        <source>Her days</source>
        <translation>Su día a día</translation>
    </message>
    <message>
        <source>Minutes for her hair</source>
        <translation>Minutos para su cabello</translation>
    </message>
    <message>
        <source>Minutes a day that she has for her hair</source>
        <translation>Minutos al día que tiene para su cabello</translation>
    </message>
    <message>
        <source>a day</source>
        <translation>al día</translation>
    </message>
    <message>
        <source>Washes</source>
        <translation>Lavados</translation>
    </message>
    <message>
        <source>How often she washes it</source>
        <translation>Con qué frecuencia lo lava</translation>
    </message>
    <message>
        <source>a week</source>
        <translation>por semana</translation>
    </message>
    <message>
        <source>Swims</source>
        <translation>Natación</translation>
    </message>
    <message>
        <source>How often she swims</source>
        <translation>Con qué frecuencia nada</translation>
    </message>
    <message>
        <source>Water, cover and styles</source>
        <translation>Agua, protección y peinados</translation>
    </message>
    <message>
        <source>Is the water at home hard?</source>
        <translation>¿El agua de casa es dura?</translation>
    </message>
    <message>
        <source>Does she cover her hair by day?</source>
        <translation>¿Se cubre el cabello de día?</translation>
    </message>
    <message>
        <source>Does headwear press on the hairline?</source>
        <translation>¿Algo le aprieta en la línea del cabello?</translation>
    </message>
    <message>
        <source>A smooth cover at night?</source>
        <translation>¿Una funda suave por la noche?</translation>
    </message>
    <message>
        <source>Styles that pull?</source>
        <translation>¿Peinados que tiran?</translation>
    </message>
    <message>
        <source>Does a style hurt, then or afterwards?</source>
        <translation>¿Algún peinado duele, al hacerlo o después?</translation>
    </message>
    <message>
        <source>Is hair added?</source>
        <translation>¿Lleva cabello añadido?</translation>
    </message>
    <message>
        <source>One style stays in</source>
        <translation>Un peinado dura</translation>
    </message>
    <message>
        <source>How long one style stays in</source>
        <translation>Cuánto tiempo lleva un mismo peinado</translation>
    </message>
    <message>
        <source>weeks</source>
        <translation>semanas</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>Does she use heat on it?</source>
        <translation>¿Usa calor?</translation>
    </message>
    <message>
        <source>Another heat tool</source>
        <translation>Otra herramienta de calor</translation>
    </message>
    <message>
        <source>Nothing was told in the last half year.</source>
        <translation>No se ha contado nada en el último medio año.</translation>
    </message>
    <message>
        <source>As told today.</source>
        <translation>Según lo contado hoy.</translation>
    </message>
    <message>
        <source>As told on %1. What you change now is of today.</source>
        <translation>Según lo contado el %1. Lo que cambie ahora es de hoy.</translation>
    </message>
</context>
<context>
    <name>kempt::desk::DuePage</name>
    <message>
        <source>Who is in the chair?</source>
        <translation>¿Quién está en el sillón?</translation>
    </message>
    <message>
        <source>A row of strands coming back, for decoration</source>
        <translation>Una fila de hebras que vuelven a crecer, como adorno</translation>
    </message>
    <message>
        <source>Pick her on the left, or find her by a few letters (Ctrl+F). A new client takes two fields (Ctrl+N).</source>
        <translation>Elíjala a la izquierda o búsquela con unas letras (Ctrl+F). Una clienta nueva son dos campos (Ctrl+N).</translation>
    </message>
    <message>
        <source>Who is due</source>
        <translation>A quién le toca</translation>
    </message>
    <message>
        <source>Save for a calendar…</source>
        <translation>Guardar para un calendario…</translation>
    </message>
    <message>
        <source>with names</source>
        <translation>con nombres</translation>
    </message>
    <message>
        <source>The calendar file carries the clients&apos; names</source>
        <translation>El archivo de calendario lleva los nombres de las clientas</translation>
    </message>
    <message>
        <source>The file leaves the book. Without names it says the clients&apos; numbers.</source>
        <translation>El archivo sale del libro. Sin nombres lleva los números de las clientas.</translation>
    </message>
    <message>
        <source>who is due.ics</source>
        <translation>a quien le toca.ics</translation>
    </message>
    <message>
        <source>Reading the book…</source>
        <translation>Leyendo el libro…</translation>
    </message>
    <message>
        <source>Looking up who is due</source>
        <translation>Buscando a quién le toca</translation>
    </message>
    <message>
        <source>Who is due could not be read.</source>
        <translation>No se pudo leer a quién le toca.</translation>
    </message>
    <message>
        <source>Nobody in the next fortnight. Dates are counted from services and photos that are in the book.</source>
        <translation>Nadie en las próximas dos semanas. Las fechas se cuentan a partir de los servicios y fotos que hay en el libro.</translation>
    </message>
    <message>
        <source>%1 past the last day</source>
        <translation>%1 con el último día pasado</translation>
    </message>
    <message>
        <source>date</source>
        <translation>fecha</translation>
    </message>
    <message>
        <source>dates</source>
        <translation>fechas</translation>
    </message>
    <message>
        <source>%1 now or within a fortnight</source>
        <translation>%1 ahora o en dos semanas</translation>
    </message>
    <message>
        <source> %1 more passed over a quarter of a year ago and are not listed.</source>
        <translation> Otras %1 pasaron hace más de tres meses y no aparecen.</translation>
    </message>
    <message>
        <source>%1: %2 to %3</source>
        <translation>%1: del %2 al %3</translation>
    </message>
    <message>
        <source>, passed</source>
        <translation>, ya pasó</translation>
    </message>
    <message>
        <source>Open %1. %2</source>
        <translation>Abrir %1. %2</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation>%1 más</translation>
    </message>
    <message>
        <source>Show %1 more clients</source>
        <translation>Mostrar %1 clientas más</translation>
    </message>
</context>
<context>
    <name>kempt::desk::EyeBands</name>
    <message>
        <source>Photo with the bands over the eyes</source>
        <translation>Foto con las bandas sobre los ojos</translation>
    </message>
    <message>
        <source>No band. Insert adds one.</source>
        <translation>Sin banda. Insert añade una.</translation>
    </message>
    <message>
        <source>%1 bands, number %2 is picked. N the next one, arrows move it, plus and minus its size, less and greater its height, brackets turn it, Delete removes it.</source>
        <translation>%1 bandas, elegida la %2. N, la siguiente; las flechas la mueven, más y menos el tamaño, menor y mayor la altura, los corchetes la giran, Supr la quita.</translation>
    </message>
</context>
<context>
    <name>kempt::desk::EyesDialog</name>
    <message>
        <source>Eyes in the pictures</source>
        <translation>Ojos en las imágenes</translation>
    </message>
    <message>
        <source>The band is drawn into every picture that leaves the book; the photo in the book stays as it is. Drag it, its end or its side; arrows, + − and [ ] do the same.</source>
        <translation>La banda se dibuja en cada imagen que sale del libro; la foto del libro queda como está. Arrástrela, o su extremo o su lado; las flechas, + − y [ ] hacen lo mismo.</translation>
    </message>
    <message>
        <source>Add a band</source>
        <translation>Añadir una banda</translation>
    </message>
    <message>
        <source>Remove it</source>
        <translation>Quitarla</translation>
    </message>
    <message>
        <source>Turn left</source>
        <translation>Girar a la izquierda</translation>
    </message>
    <message>
        <source>Turn right</source>
        <translation>Girar a la derecha</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>Más grande</translation>
    </message>
    <message>
        <source>Smaller</source>
        <translation>Más pequeña</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Skip this photo</source>
        <translation>Saltar esta foto</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>No eyes to hide here</source>
        <translation>Aquí no hay ojos que tapar</translation>
    </message>
    <message>
        <source>Photo %1 of %2</source>
        <translation>Foto %1 de %2</translation>
    </message>
    <message>
        <source>Opening…</source>
        <translation>Abriendo…</translation>
    </message>
    <message>
        <source>Looking for eyes</source>
        <translation>Buscando ojos</translation>
    </message>
    <message>
        <source>Photo %1 of %2: %3, %4</source>
        <translation>Foto %1 de %2: %3, %4</translation>
    </message>
    <message>
        <source>Keeping the bands</source>
        <translation>Guardando las bandas</translation>
    </message>
</context>
<context>
    <name>kempt::desk::FindingsPanel</name>
    <message>
        <source>What speaks against it</source>
        <translation>Lo que habla en contra</translation>
    </message>
    <message>
        <source>Fewer notes</source>
        <translation>Menos notas</translation>
    </message>
    <message>
        <source>The wait is over on %1.</source>
        <translation>La espera termina el %1.</translation>
    </message>
    <message>
        <source>Plan %1</source>
        <translation>Planear %1</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Fuente: %1</translation>
    </message>
    <message>
        <source>stop</source>
        <translation>alto</translation>
    </message>
    <message>
        <source>stops</source>
        <translation>altos</translation>
    </message>
    <message>
        <source>caution</source>
        <translation>precaución</translation>
    </message>
    <message>
        <source>cautions</source>
        <translation>precauciones</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>notes</source>
        <translation>notas</translation>
    </message>
    <message>
        <source>On what is written down, no rule speaks against it.</source>
        <translation>Según lo anotado, ninguna regla habla en contra.</translation>
    </message>
    <message>
        <source> What has to be checked first is still open.</source>
        <translation> Lo que hay que comprobar antes sigue abierto.</translation>
    </message>
    <message>
        <source> That clears nothing.</source>
        <translation> Eso no autoriza nada.</translation>
    </message>
    <message>
        <source>%1 more notes</source>
        <translation>%1 notas más</translation>
    </message>
    <message>
        <source>Nothing can be said of this plan as it stands.</source>
        <translation>De este plan, tal como está, no se puede decir nada.</translation>
    </message>
    <message>
        <source>What you entered is kept.</source>
        <translation>Lo que introdujo queda guardado.</translation>
    </message>
</context>
<context>
    <name>kempt::desk::FringeBar</name>
    <message>
        <source>%1 per cent of the way to the target</source>
        <translation>%1 por ciento del camino al objetivo</translation>
    </message>
    <message>
        <source>No way to show yet</source>
        <translation>Aún no hay camino que mostrar</translation>
    </message>
</context>
<context>
    <name>kempt::desk::GradesPage</name>
    <message>
        <source>grade of %1, %2</source>
        <translation>grado de %1, %2</translation>
    </message>
    <message>
        <source>Keeping the grade</source>
        <translation>Guardando el grado</translation>
    </message>
    <message>
        <source>Grades</source>
        <translation>Grados</translation>
    </message>
    <message>
        <source>All zones</source>
        <translation>Todas las zonas</translation>
    </message>
    <message>
        <source>Which grading</source>
        <translation>Qué valoración</translation>
    </message>
    <message>
        <source>first grading</source>
        <translation>primera valoración</translation>
    </message>
    <message>
        <source>second grading</source>
        <translation>segunda valoración</translation>
    </message>
    <message>
        <source>Leave it open</source>
        <translation>Dejarlo abierto</translation>
    </message>
    <message>
        <source>Leave it open, on to the next zone (N)</source>
        <translation>Dejarlo abierto y pasar a la zona siguiente (N)</translation>
    </message>
    <message>
        <source>Keys 0 to 4 grade, N leaves it open; the next zone follows by itself.</source>
        <translation>Las teclas 0 a 4 valoran, N lo deja abierto; la zona siguiente viene sola.</translation>
    </message>
    <message>
        <source>Nothing open in this grading</source>
        <translation>No queda nada abierto en esta valoración</translation>
    </message>
    <message>
        <source>Reading the grades</source>
        <translation>Leyendo los grados</translation>
    </message>
    <message>
        <source>%1  ·  visit of %2</source>
        <translation>%1  ·  visita del %2</translation>
    </message>
    <message>
        <source>%1 of %2 given</source>
        <translation>%1 de %2 valorados</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>A second grading on the same day shows how steady the eye is. It does not show the first.</source>
        <translation>Una segunda valoración el mismo día muestra lo constante que es el ojo. No muestra la primera.</translation>
    </message>
    <message>
        <source>There is no first grading yet.</source>
        <translation>Aún no hay primera valoración.</translation>
    </message>
    <message>
        <source>Graded twice over all her visits: %1, %2 of them alike. Weighted kappa %3: 1 is full agreement, 0 is what chance alone would bring.</source>
        <translation>Valorados dos veces en todas sus visitas: %1, iguales %2. Kappa ponderada %3: 1 es acuerdo total, 0 es lo que daría solo el azar.</translation>
    </message>
    <message>
        <source>grade</source>
        <translation>grado</translation>
    </message>
    <message>
        <source>grades</source>
        <translation>grados</translation>
    </message>
    <message>
        <source>Graded twice over all her visits: %1, %2 of them alike. That is too few, or too much alike, to say how steady the eye is.</source>
        <translation>Valorados dos veces en todas sus visitas: %1, iguales %2. Son muy pocos, o demasiado parecidos, para decir lo constante que es el ojo.</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <translation>%1  %2</translation>
    </message>
    <message>
        <source>%1, %2: open</source>
        <translation>%1, %2: abierto</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
</context>
<context>
    <name>kempt::desk::HairPanel</name>
    <message>
        <source>What this hair has been through</source>
        <translation>Por lo que ha pasado este cabello</translation>
    </message>
    <message>
        <source>From the scalp on the left to the ends. A full stroke: it surely went through this. Dotted: perhaps, as the rate of growth leaves it open. Lightened hair is hollow. Press a place, or walk it with Left and Right.</source>
        <translation>Del cuero cabelludo, a la izquierda, a las puntas. Trazo lleno: seguro que pasó por esto. Punteado: quizá, el ritmo de crecimiento lo deja abierto. El cabello decolorado aparece hueco. Pulse un lugar o recórralo con Izquierda y Derecha.</translation>
    </message>
    <message>
        <source>with treatments and styling</source>
        <translation>con tratamientos y peinados</translation>
    </message>
    <message>
        <source>Show treatments and styling along the hair too</source>
        <translation>Mostrar también tratamientos y peinados a lo largo del cabello</translation>
    </message>
    <message>
        <source>Growth of %1 a month (%2 a day, SD %3 µm). %4</source>
        <translation>Crecimiento de %1 al mes (%2 al día, DE %3 µm). %4</translation>
    </message>
    <message>
        <source>%1 µm</source>
        <translation>%1 µm</translation>
    </message>
    <message>
        <source>At %1 from the scalp</source>
        <translation>A %1 del cuero cabelludo</translation>
    </message>
    <message>
        <source>Perhaps: %1</source>
        <translation>Quizá: %1</translation>
    </message>
    <message>
        <source>Nothing that is in the record.</source>
        <translation>Nada que conste en el historial.</translation>
    </message>
    <message>
        <source>Nothing is in the record.</source>
        <translation>No consta nada en el historial.</translation>
    </message>
    <message>
        <source>The record does not reach back to when this hair grew: it may have been through more. Ask.</source>
        <translation>El historial no llega hasta cuando creció este cabello: puede haber pasado por más. Pregunte.</translation>
    </message>
</context>
<context>
    <name>kempt::desk::HeatRow</name>
    <message>
        <source>Heat tool</source>
        <translation>Herramienta de calor</translation>
    </message>
    <message>
        <source>Take off</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Take the %1 off the list</source>
        <translation>Quitar %1 de la lista</translation>
    </message>
    <message>
        <source>Temperature of the %1</source>
        <translation>Temperatura: %1</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>Times a week of the %1</source>
        <translation>Veces por semana: %1</translation>
    </message>
    <message>
        <source>a week</source>
        <translation>por semana</translation>
    </message>
    <message>
        <source>hardly ever</source>
        <translation>casi nunca</translation>
    </message>
    <message>
        <source>%1 on wet hair</source>
        <translation>%1 sobre cabello mojado</translation>
    </message>
    <message>
        <source>Tool</source>
        <translation>Herramienta</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatura</translation>
    </message>
    <message>
        <source>How often</source>
        <translation>Con qué frecuencia</translation>
    </message>
    <message>
        <source>On wet hair</source>
        <translation>Sobre cabello mojado</translation>
    </message>
</context>
<context>
    <name>kempt::desk::HintBox</name>
    <message>
        <source>Measure the whole sheet</source>
        <translation>Medir toda la hoja</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
</context>
<context>
    <name>kempt::desk::HomeCarePanel</name>
    <message>
        <source>Care at home</source>
        <translation>Cuidados en casa</translation>
    </message>
    <message>
        <source>Nothing fits what is known so far.</source>
        <translation>Nada encaja con lo que se sabe hasta ahora.</translation>
    </message>
    <message>
        <source>%1 min a week</source>
        <translation>%1 min por semana</translation>
    </message>
    <message>
        <source> of the %1 that she has</source>
        <translation> de los %1 que tiene</translation>
    </message>
    <message>
        <source>. More may belong here: %1</source>
        <translation>. Puede faltar algo: %1</translation>
    </message>
    <message>
        <source>Left out for her minutes or the page: %1</source>
        <translation>Fuera por falta de minutos o de espacio: %1</translation>
    </message>
</context>
<context>
    <name>kempt::desk::Inbox</name>
    <message>
        <source>Looking into the watched folder</source>
        <translation>Mirando la carpeta vigilada</translation>
    </message>
    <message>
        <source>Looking at the files</source>
        <translation>Mirando los archivos</translation>
    </message>
    <message>
        <source>There is no picture among what was dropped or chosen.</source>
        <translation>Entre lo soltado o elegido no hay ninguna imagen.</translation>
    </message>
    <message>
        <source>Looking at a new photo</source>
        <translation>Mirando una foto nueva</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Sorting new photos</source>
        <translation>Ordenando fotos nuevas</translation>
    </message>
    <message>
        <source>Looking which view it is</source>
        <translation>Viendo qué vista es</translation>
    </message>
    <message>
        <source>The skin fits the photo of %1 to %2 mm.</source>
        <translation>La piel encaja con la foto del %1 a %2 mm.</translation>
    </message>
    <message>
        <source>It fits the photo of %1.</source>
        <translation>Encaja con la foto del %1.</translation>
    </message>
    <message>
        <source>The one view that is still missing.</source>
        <translation>La única vista que aún falta.</translation>
    </message>
    <message>
        <source>As you chose.</source>
        <translation>Como usted eligió.</translation>
    </message>
    <message>
        <source>Taking photos in</source>
        <translation>Incorporando fotos</translation>
    </message>
    <message>
        <source>%1 taken into %2’s visit of %3.</source>
        <translation>%1 en la visita de %2 del %3.</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>foto</translation>
    </message>
    <message>
        <source>photos</source>
        <translation>fotos</translation>
    </message>
    <message>
        <source>Leaving a photo alone</source>
        <translation>Dejando una foto aparte</translation>
    </message>
    <message>
        <source>Bringing a photo back</source>
        <translation>Recuperando una foto</translation>
    </message>
    <message>
        <source>It can be undone under New photos (Ctrl+Z).</source>
        <translation>Se puede deshacer en Fotos nuevas (Ctrl+Z).</translation>
    </message>
    <message>
        <source>Taken last: %1 of %2, visit of %3.</source>
        <translation>Lo último aceptado: %1 de %2, visita del %3.</translation>
    </message>
    <message>
        <source>Undoing a take</source>
        <translation>Deshaciendo lo aceptado</translation>
    </message>
</context>
<context>
    <name>kempt::desk::InboxPage</name>
    <message>
        <source>New photos</source>
        <translation>Fotos nuevas</translation>
    </message>
    <message>
        <source>Nothing goes into a record before you take it. The files stay where they are.</source>
        <translation>Nada entra en un historial antes de que usted lo acepte. Los archivos se quedan donde están.</translation>
    </message>
    <message>
        <source>Take all</source>
        <translation>Aceptar todas</translation>
    </message>
    <message>
        <source>Choose photos…</source>
        <translation>Elegir fotos…</translation>
    </message>
    <message>
        <source>Bring back the last one left</source>
        <translation>Recuperar la última apartada</translation>
    </message>
    <message>
        <source>No folder is watched. Choose the one that your phone syncs to under Settings (Ctrl+,).</source>
        <translation>No se vigila ninguna carpeta. Elija en Ajustes (Ctrl+,) la que sincroniza su teléfono.</translation>
    </message>
    <message>
        <source>Watched folder: %1. It is only looked at.</source>
        <translation>Carpeta vigilada: %1. Solo se mira.</translation>
    </message>
    <message>
        <source>%1 in it, older than %2 days, not looked at.</source>
        <translation>%1 en ella, de hace más de %2 días, sin mirar.</translation>
    </message>
    <message>
        <source>picture</source>
        <translation>imagen</translation>
    </message>
    <message>
        <source>pictures</source>
        <translation>imágenes</translation>
    </message>
    <message>
        <source>Look at them too</source>
        <translation>Mirarlas también</translation>
    </message>
    <message>
        <source>%1 more come up when these are done.</source>
        <translation>%1 más aparecen cuando acabe con estas.</translation>
    </message>
    <message>
        <source>No new photos. Drop some anywhere on this window, or choose them.</source>
        <translation>No hay fotos nuevas. Suelte algunas en cualquier parte de esta ventana, o elíjalas.</translation>
    </message>
    <message>
        <source>Looking at the photos…</source>
        <translation>Mirando las fotos…</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, %2 to %3</source>
        <translation>%1, de %2 a %3</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>foto</translation>
    </message>
    <message>
        <source>photos</source>
        <translation>fotos</translation>
    </message>
    <message>
        <source>They were taken on another day than the visit: %1.</source>
        <translation>Se hicieron otro día que la visita: %1.</translation>
    </message>
    <message>
        <source>Take these</source>
        <translation>Aceptar estas</translation>
    </message>
    <message>
        <source>Take the photos of %1</source>
        <translation>Aceptar las fotos de %1</translation>
    </message>
    <message>
        <source>Somebody else’s (C)</source>
        <translation>De otra persona (C)</translation>
    </message>
    <message>
        <source>Say whose they are (C)</source>
        <translation>Decir de quién son (C)</translation>
    </message>
    <message>
        <source>Choose the client of the photos of %1</source>
        <translation>Elegir la clienta de las fotos de %1</translation>
    </message>
    <message>
        <source>Could not be read</source>
        <translation>No se pudo leer</translation>
    </message>
    <message>
        <source>In the book already</source>
        <translation>Ya en el libro</translation>
    </message>
    <message>
        <source>already in the record of %1 on %2: %3, shot %4</source>
        <translation>ya en el historial de %1 el %2: %3, toma %4</translation>
    </message>
    <message>
        <source>And %1 more.</source>
        <translation>Y %1 más.</translation>
    </message>
    <message>
        <source>Put these away</source>
        <translation>Apartar estas</translation>
    </message>
    <message>
        <source>Take all (A)</source>
        <translation>Aceptar todas (A)</translation>
    </message>
    <message>
        <source>Take the %1 that are sorted (A)</source>
        <translation>Aceptar las %1 ordenadas (A)</translation>
    </message>
    <message>
        <source>No photo has both its client and its view yet</source>
        <translation>Ninguna foto tiene aún clienta y vista</translation>
    </message>
    <message>
        <source>Photos (*.jpg *.jpeg *.png *.webp *.tif *.tiff *.heic *.heif);;All files (*)</source>
        <translation>Fotos (*.jpg *.jpeg *.png *.webp *.tif *.tiff *.heic *.heif);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Undo it (Ctrl+Z)</source>
        <translation>Deshacer (Ctrl+Z)</translation>
    </message>
    <message>
        <source>Undo the last take: the photos come back here</source>
        <translation>Deshacer lo último aceptado: las fotos vuelven aquí</translation>
    </message>
    <message>
        <source>Take the %1 sorted ones shown here (A)</source>
        <translation>Aceptar las %1 ordenadas que se ven aquí (A)</translation>
    </message>
</context>
<context>
    <name>kempt::desk::InboxRow</name>
    <message>
        <source>New photo %1</source>
        <translation>Foto nueva %1</translation>
    </message>
    <message>
        <source>Picture of %1</source>
        <translation>Imagen de %1</translation>
    </message>
    <message>
        <source>View of %1</source>
        <translation>Vista de %1</translation>
    </message>
    <message>
        <source>Take it (T)</source>
        <translation>Aceptarla (T)</translation>
    </message>
    <message>
        <source>Take %1 into the record</source>
        <translation>Aceptar %1 en el historial</translation>
    </message>
    <message>
        <source>Leave it (L)</source>
        <translation>Apartarla (L)</translation>
    </message>
    <message>
        <source>Leave %1 alone: it does not come again</source>
        <translation>Apartar %1: no vuelve a aparecer</translation>
    </message>
    <message>
        <source>It stays where it is and does not come again</source>
        <translation>Se queda donde está y no vuelve a aparecer</translation>
    </message>
    <message>
        <source>Taking it in…</source>
        <translation>Incorporándola…</translation>
    </message>
    <message>
        <source>Looking which view it is…</source>
        <translation>Viendo qué vista es…</translation>
    </message>
    <message>
        <source>Which view is it? Keys 1 to 7.</source>
        <translation>¿Qué vista es? Teclas 1 a 7.</translation>
    </message>
    <message>
        <source>First whose it is, then which view (1 to 7).</source>
        <translation>Primero de quién es, luego qué vista (1 a 7).</translation>
    </message>
    <message>
        <source>Client and view come first</source>
        <translation>Antes, la clienta y la vista</translation>
    </message>
    <message>
        <source>It could not be taken: %1</source>
        <translation>No se pudo aceptar: %1</translation>
    </message>
</context>
<context>
    <name>kempt::desk::KeptStrip</name>
    <message>
        <source>Take back</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Kept as you enter it. What is left open stays not known.</source>
        <translation>Se guarda según lo introduce. Lo que queda abierto sigue sin saberse.</translation>
    </message>
    <message>
        <source>Kept.</source>
        <translation>Guardado.</translation>
    </message>
    <message>
        <source>Not kept: %1 The book holds what stood here before. Correct it, or take it back.</source>
        <translation>No guardado: %1 El libro conserva lo que había. Corríjalo o deshágalo.</translation>
    </message>
    <message>
        <source>Take the last change back: there is none yet</source>
        <translation>Deshacer el último cambio: aún no hay ninguno</translation>
    </message>
    <message>
        <source>Take back: %1 (Ctrl+Z)</source>
        <translation>Deshacer: %1 (Ctrl+Z)</translation>
    </message>
</context>
<context>
    <name>kempt::desk::Legend</name>
    <message>
        <source>the band that is measured</source>
        <translation>la franja que se mide</translation>
    </message>
    <message>
        <source>taken for hair</source>
        <translation>tomado por cabello</translation>
    </message>
    <message>
        <source>the region; its comb is towards the roots</source>
        <translation>la zona; su peine mira a las raíces</translation>
    </message>
    <message>
        <source>crest of the highlight</source>
        <translation>cresta del brillo</translation>
    </message>
    <message>
        <source>above half its height</source>
        <translation>por encima de media altura</translation>
    </message>
    <message>
        <source>the way the fibres run</source>
        <translation>el sentido de las fibras</translation>
    </message>
    <message>
        <source>the hair whose colours were taken</source>
        <translation>el cabello cuyos colores se tomaron</translation>
    </message>
    <message>
        <source>line of demarcation, and how far it is from the scalp</source>
        <translation>línea de demarcación y su distancia al cuero cabelludo</translation>
    </message>
    <message>
        <source>the hem as it is</source>
        <translation>el borde tal como es</translation>
    </message>
    <message>
        <source>a smooth hem through it</source>
        <translation>un borde regular a través</translation>
    </message>
    <message>
        <source>smooth outline; hair outside flies away</source>
        <translation>contorno regular; el cabello de fuera está suelto</translation>
    </message>
    <message>
        <source>one colour for each strand</source>
        <translation>un color para cada hebra</translation>
    </message>
    <message>
        <source>dashed: a guess was made at a crossing or a gap</source>
        <translation>a trazos: se adivinó en un cruce o un hueco</translation>
    </message>
    <message>
        <source>ring: goes on unseen, its length is a least one</source>
        <translation>anillo: sigue sin verse, su largo es un mínimo</translation>
    </message>
    <message>
        <source>stripes: could not be made out, not counted</source>
        <translation>rayas: no se distinguió, no se cuenta</translation>
    </message>
    <message>
        <source>taken out by hand; removing the mark brings it back</source>
        <translation>quitada a mano; al borrar la marca vuelve</translation>
    </message>
    <message>
        <source>joined by hand; removing the mark parts them</source>
        <translation>unidas a mano; al borrar la marca se separan</translation>
    </message>
</context>
<context>
    <name>kempt::desk::LiveMeter</name>
    <message>
        <source>Measuring</source>
        <translation>Midiendo</translation>
    </message>
</context>
<context>
    <name>kempt::desk::MainWindow</name>
    <message>
        <source>Kempt</source>
        <translation>Kempt</translation>
    </message>
    <message>
        <source>%1 – Kempt</source>
        <translation>%1 – Kempt</translation>
    </message>
    <message>
        <source>Back up now…</source>
        <translation>Copiar ahora…</translation>
    </message>
</context>
<context>
    <name>kempt::desk::Notice</name>
    <message>
        <source>Put this message away</source>
        <translation>Cerrar este mensaje</translation>
    </message>
</context>
<context>
    <name>kempt::desk::NumberField</name>
    <message>
        <source>%1: up to %2 %3</source>
        <translation>%1: hasta %2 %3</translation>
    </message>
</context>
<context>
    <name>kempt::desk::OneOverOther</name>
    <message>
        <source>Before and after, taking turns</source>
        <translation>Antes y después, alternando</translation>
    </message>
    <message>
        <source>How far the edge has moved</source>
        <translation>Cuánto se ha movido el contorno</translation>
    </message>
    <message>
        <source>Before: %1. After: %2. Space stops and goes on; Left shows before, Right after.</source>
        <translation>Antes: %1. Después: %2. Espacio detiene y sigue; Izquierda muestra el antes, Derecha el después.</translation>
    </message>
    <message>
        <source>How far the edge has moved cannot be told: the photos could not be laid over each other by skin or anchors, and laid by the edge lines it does not show.</source>
        <translation>No se puede saber cuánto se movió el contorno: las fotos no se pudieron superponer por la piel ni por los puntos de anclaje, y por las líneas del contorno no se ve.</translation>
    </message>
    <message>
        <source>between %1 back and %2 forward along the line</source>
        <translation>entre %1 atrás y %2 adelante a lo largo de la línea</translation>
    </message>
    <message>
        <source>On average the edge stands where it stood, as far as these photos tell (laid to about %1; %2).</source>
        <translation>De media el contorno está donde estaba, hasta donde dicen estas fotos (superpuestas con unos %1; %2).</translation>
    </message>
    <message>
        <source>laid to about %1</source>
        <translation>superpuestas con unos %1</translation>
    </message>
    <message>
        <source>laid by the anchors</source>
        <translation>superpuestas por los puntos de anclaje</translation>
    </message>
    <message>
        <source>On average the edge stands %1 further forward (%2; %3).</source>
        <translation>De media el contorno está %1 más adelante (%2; %3).</translation>
    </message>
    <message>
        <source>On average the edge stands %1 further back (%2; %3).</source>
        <translation>De media el contorno está %1 más atrás (%2; %3).</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation>detenido</translation>
    </message>
</context>
<context>
    <name>kempt::desk::PageView</name>
    <message>
        <source>Pages of the report</source>
        <translation>Páginas del informe</translation>
    </message>
    <message>
        <source>Nothing yet.</source>
        <translation>Aún nada.</translation>
    </message>
    <message>
        <source>Page %1 of %2. Page up and Page down turn pages, plus and minus go nearer and farther.</source>
        <translation>Página %1 de %2. Re Pág y Av Pág pasan página, más y menos acercan y alejan.</translation>
    </message>
</context>
<context>
    <name>kempt::desk::PhotoCanvas</name>
    <message>
        <source>Photo with its edge line</source>
        <translation>Foto con su línea del contorno</translation>
    </message>
    <message>
        <source>Remove this point</source>
        <translation>Quitar este punto</translation>
    </message>
    <message>
        <source>Add a point here</source>
        <translation>Añadir un punto aquí</translation>
    </message>
    <message>
        <source>Turn: %1</source>
        <translation>Girar: %1</translation>
    </message>
    <message>
        <source>point</source>
        <translation>punto</translation>
    </message>
    <message>
        <source>points</source>
        <translation>puntos</translation>
    </message>
    <message>
        <source>%1 on the edge line.</source>
        <translation>%1 en la línea del contorno.</translation>
    </message>
    <message>
        <source>%1 on the line for the tone.</source>
        <translation>%1 en la línea del tono.</translation>
    </message>
    <message>
        <source>%1 of 4 corners of the region for the shine.</source>
        <translation>%1 de 4 esquinas de la zona de brillo.</translation>
    </message>
    <message>
        <source>%1 of 4 corners of the region on the sheet.</source>
        <translation>%1 de 4 esquinas de la zona en la hoja.</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>anchor</source>
        <translation>punto de anclaje</translation>
    </message>
    <message>
        <source>anchors</source>
        <translation>puntos de anclaje</translation>
    </message>
    <message>
        <source>%1 %2 is picked.</source>
        <translation>Elegido: %1 %2.</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Punto</translation>
    </message>
    <message>
        <source>The sign for the hair&apos;s side is picked.</source>
        <translation>Elegida la señal del lado del cabello.</translation>
    </message>
    <message>
        <source>Hair sample</source>
        <translation>Muestra de cabello</translation>
    </message>
    <message>
        <source>Scalp sample</source>
        <translation>Muestra de cuero cabelludo</translation>
    </message>
    <message>
        <source>Corner</source>
        <translation>Esquina</translation>
    </message>
    <message>
        <source>Point of the tone line</source>
        <translation>Punto de la línea del tono</translation>
    </message>
    <message>
        <source>Anchor</source>
        <translation>Punto de anclaje</translation>
    </message>
    <message>
        <source>Ruler end</source>
        <translation>Extremo de la regla</translation>
    </message>
    <message>
        <source>A mark on a strand that was taken out is picked; removing it brings the strand back.</source>
        <translation>Elegida la marca de una hebra quitada; al borrarla la hebra vuelve.</translation>
    </message>
    <message>
        <source>The mark of a join is picked; removing it parts the strands again.</source>
        <translation>Elegida la marca de una unión; al borrarla las hebras se separan.</translation>
    </message>
</context>
<context>
    <name>kempt::desk::PhotoPage</name>
    <message>
        <source>What was half drawn was not kept: %1</source>
        <translation>Lo dibujado a medias no se guardó: %1</translation>
    </message>
    <message>
        <source>The last drawing was not kept. %1</source>
        <translation>El último dibujo no se guardó. %1</translation>
    </message>
    <message>
        <source>Keeping the drawing</source>
        <translation>Guardando el dibujo</translation>
    </message>
    <message>
        <source>Keeping the readings</source>
        <translation>Guardando las medidas</translation>
    </message>
    <message>
        <source>Taking the marks over</source>
        <translation>Pasando las marcas</translation>
    </message>
    <message>
        <source>Bringing the marks from the last visit</source>
        <translation>Trayendo las marcas de la última visita</translation>
    </message>
    <message>
        <source>%1 Look along it and move the points that are off.</source>
        <translation>%1 Repásela y mueva los puntos que no estén bien.</translation>
    </message>
    <message>
        <source>Take over the marks</source>
        <translation>Pasar las marcas</translation>
    </message>
    <message>
        <source>Click to add points, drag to move them. Keys: A adds, N and P pick, arrows nudge (Shift: by ten), Delete removes, F turns the side, + − 0 zoom.</source>
        <translation>Pulse para añadir puntos, arrastre para moverlos. Teclas: A añade, N y P eligen, las flechas desplazan (Mayús: de diez en diez), Supr quita, F cambia el lado, + − 0 zoom.</translation>
    </message>
    <message>
        <source>Take the last change back (Ctrl+Z)</source>
        <translation>Deshacer el último cambio (Ctrl+Z)</translation>
    </message>
    <message>
        <source>Do it again (Ctrl+Shift+Z)</source>
        <translation>Rehacer (Ctrl+Mayús+Z)</translation>
    </message>
    <message>
        <source>Nearer (+)</source>
        <translation>Más cerca (+)</translation>
    </message>
    <message>
        <source>Farther (−)</source>
        <translation>Más lejos (−)</translation>
    </message>
    <message>
        <source>The whole photo (0)</source>
        <translation>La foto entera (0)</translation>
    </message>
    <message>
        <source>Show what was measured</source>
        <translation>Mostrar lo que se midió</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Medido</translation>
    </message>
    <message>
        <source>The photo before (Ctrl+Page up)</source>
        <translation>La foto anterior (Ctrl+Re Pág)</translation>
    </message>
    <message>
        <source>The next photo (Ctrl+Page down)</source>
        <translation>La foto siguiente (Ctrl+Av Pág)</translation>
    </message>
    <message>
        <source>Distance between the ruler&apos;s two points</source>
        <translation>Distancia entre los dos puntos de la regla</translation>
    </message>
    <message>
        <source>Distance between the two points</source>
        <translation>Distancia entre los dos puntos</translation>
    </message>
    <message>
        <source> in</source>
        <translation> pulg.</translation>
    </message>
    <message>
        <source> mm</source>
        <translation> mm</translation>
    </message>
    <message>
        <source>not set</source>
        <translation>sin poner</translation>
    </message>
    <message>
        <source>Opening the photo…</source>
        <translation>Abriendo la foto…</translation>
    </message>
    <message>
        <source>Reading the photo</source>
        <translation>Leyendo la foto</translation>
    </message>
    <message>
        <source>%1, shot %2</source>
        <translation>%1, toma %2</translation>
    </message>
    <message>
        <source>Photo: %1</source>
        <translation>Foto: %1</translation>
    </message>
    <message>
        <source>Take over the marks from shot %1</source>
        <translation>Pasar las marcas de la toma %1</translation>
    </message>
    <message>
        <source>Bring the marks from the last visit</source>
        <translation>Traer las marcas de la última visita</translation>
    </message>
    <message>
        <source>As they were drawn on %1; you look at them before they count</source>
        <translation>Como se dibujaron el %1; usted las revisa antes de que cuenten</translation>
    </message>
    <message>
        <source>Opening the photo</source>
        <translation>Abriendo la foto</translation>
    </message>
    <message>
        <source>Nothing is measured yet.</source>
        <translation>Aún no se ha medido nada.</translation>
    </message>
</context>
<context>
    <name>kempt::desk::PhotoTile</name>
    <message>
        <source>refused</source>
        <translation>rechazada</translation>
    </message>
    <message>
        <source>needs a look</source>
        <translation>conviene mirarla</translation>
    </message>
</context>
<context>
    <name>kempt::desk::PlanPage</name>
    <message>
        <source>What can this hair take today?</source>
        <translation>¿Qué admite hoy este cabello?</translation>
    </message>
    <message>
        <source>Planned today</source>
        <translation>Planeado para hoy</translation>
    </message>
    <message>
        <source>Add a service</source>
        <translation>Añadir un servicio</translation>
    </message>
    <message>
        <source>Nothing yet. Add a service: what speaks against it is said at once.</source>
        <translation>Aún nada. Añada un servicio: lo que hable en contra se dice al momento.</translation>
    </message>
    <message>
        <source>Reading what is known of the hair</source>
        <translation>Leyendo lo que se sabe del cabello</translation>
    </message>
    <message>
        <source>%1  ·  %2</source>
        <translation>%1  ·  %2</translation>
    </message>
    <message>
        <source>Visit</source>
        <translation>Visita</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>As planned on %1</source>
        <translation>Como se planeó el %1</translation>
    </message>
    <message>
        <source>Plan what was planned on %1: %2</source>
        <translation>Planear lo que se planeó el %1: %2</translation>
    </message>
    <message>
        <source>Keeping the plan</source>
        <translation>Guardando el plan</translation>
    </message>
    <message>
        <source>Working out the plan</source>
        <translation>Calculando el plan</translation>
    </message>
    <message>
        <source>Keeping the answer</source>
        <translation>Guardando la respuesta</translation>
    </message>
    <message>
        <source>Put %1 back</source>
        <translation>Volver a poner %1</translation>
    </message>
    <message>
        <source>Put %1 back on the plan</source>
        <translation>Volver a poner %1 en el plan</translation>
    </message>
    <message>
        <source>Marking a service as done</source>
        <translation>Marcando un servicio como hecho</translation>
    </message>
    <message>
        <source>Keeping how far the record goes back</source>
        <translation>Guardando hasta dónde llega el historial</translation>
    </message>
</context>
<context>
    <name>kempt::desk::ProfilePage</name>
    <message>
        <source>Hair and days</source>
        <translation>Cabello y día a día</translation>
    </message>
    <message>
        <source>Reading what she told</source>
        <translation>Leyendo lo que contó</translation>
    </message>
    <message>
        <source>Visit</source>
        <translation>Visita</translation>
    </message>
    <message>
        <source>what was entered last</source>
        <translation>lo último introducido</translation>
    </message>
    <message>
        <source>the last change</source>
        <translation>el último cambio</translation>
    </message>
    <message>
        <source>Keeping what she told</source>
        <translation>Guardando lo que contó</translation>
    </message>
</context>
<context>
    <name>kempt::desk::ProfilePanel</name>
    <message>
        <source>Her hair</source>
        <translation>Su cabello</translation>
    </message>
    <message>
        <source>How thick are single hairs?</source>
        <translation>¿Qué grosor tiene cada cabello?</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>Growth as of which hair?</source>
        <translation>¿Crecimiento según qué cabello?</translation>
    </message>
    <message>
        <source>African</source>
        <translation>Africano</translation>
    </message>
    <message>
        <source>Asian</source>
        <translation>Asiático</translation>
    </message>
    <message>
        <source>Caucasian</source>
        <translation>Caucásico</translation>
    </message>
    <message>
        <source>unknown, or mixed</source>
        <translation>no se sabe, o mezcla</translation>
    </message>
    <message>
        <source>As studies of growth name their groups. It counts only until her own growth was measured.</source>
        <translation>Según llaman a sus grupos los estudios de crecimiento. Solo cuenta hasta que se mida el suyo propio.</translation>
    </message>
    <message>
        <source>Length of the longest hair, stretched straight</source>
        <translation>Largo del cabello más largo, estirado</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>sin medir</translation>
    </message>
    <message>
        <source>Day on which the length was measured</source>
        <translation>Día en que se midió el largo</translation>
    </message>
    <message>
        <source>Longest hair, stretched straight</source>
        <translation>Cabello más largo, estirado</translation>
    </message>
    <message>
        <source>Measured on</source>
        <translation>Medido el</translation>
    </message>
    <message>
        <source>Her birthday, with the year</source>
        <translation>Su fecha de nacimiento, con el año</translation>
    </message>
    <message>
        <source>Her age, where she does not tell the birthday</source>
        <translation>Su edad, si no dice la fecha</translation>
    </message>
    <message>
        <source>years</source>
        <translation>años</translation>
    </message>
    <message>
        <source>not told</source>
        <translation>no lo dijo</translation>
    </message>
    <message>
        <source>Born on</source>
        <translation>Nacida el</translation>
    </message>
    <message>
        <source>Or her age today</source>
        <translation>O su edad hoy</translation>
    </message>
    <message>
        <source>Is every service of her hair in the record?</source>
        <translation>¿Constan todos los servicios de su cabello?</translation>
    </message>
    <message>
        <source>all her life</source>
        <translation>toda su vida</translation>
    </message>
    <message>
        <source>since a day</source>
        <translation>desde un día</translation>
    </message>
    <message>
        <source>Day since which every service is in the record</source>
        <translation>Día desde el que constan todos los servicios</translation>
    </message>
    <message>
        <source>Since</source>
        <translation>Desde</translation>
    </message>
    <message>
        <source>The birthday says it.</source>
        <translation>Lo dice la fecha de nacimiento.</translation>
    </message>
    <message>
        <source>Age, in years, today</source>
        <translation>Edad, en años, hoy</translation>
    </message>
    <message>
        <source>Told again today</source>
        <translation>Contado de nuevo hoy</translation>
    </message>
    <message>
        <source>Told on %1.</source>
        <translation>Contado el %1.</translation>
    </message>
    <message>
        <source>When it was told was not kept.</source>
        <translation>No se guardó cuándo se contó.</translation>
    </message>
    <message>
        <source>That is too long ago to count: ask again.</source>
        <translation>Hace demasiado para que valga: pregunte de nuevo.</translation>
    </message>
</context>
<context>
    <name>kempt::desk::ProgressPanel</name>
    <message>
        <source>Progress</source>
        <translation>Evolución</translation>
    </message>
    <message>
        <source>View of the chart</source>
        <translation>Vista del gráfico</translation>
    </message>
    <message>
        <source>Reading of the chart</source>
        <translation>Medida del gráfico</translation>
    </message>
    <message>
        <source>Her target</source>
        <translation>Su objetivo</translation>
    </message>
    <message>
        <source>Target for this reading</source>
        <translation>Objetivo de esta medida</translation>
    </message>
    <message>
        <source>Set target</source>
        <translation>Poner objetivo</translation>
    </message>
    <message>
        <source>Drop target</source>
        <translation>Quitar objetivo</translation>
    </message>
    <message>
        <source>Before and after</source>
        <translation>Antes y después</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Leyendo…</translation>
    </message>
    <message>
        <source>Reading the progress</source>
        <translation>Leyendo la evolución</translation>
    </message>
    <message>
        <source>Nothing to show yet. Take photos at a visit and draw the edge line on them: from the second visit on, Kempt says whether the change is real.</source>
        <translation>Aún no hay nada que mostrar. Haga fotos en una visita y dibuje en ellas la línea del contorno: desde la segunda visita, Kempt dice si el cambio es real.</translation>
    </message>
    <message>
        <source>%1, %2: target %3 %4</source>
        <translation>%1, %2: objetivo %3 %4</translation>
    </message>
    <message>
        <source>Show the chart of %1</source>
        <translation>Mostrar el gráfico de %1</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>aún no</translation>
    </message>
    <message>
        <source>%1 since the first visit</source>
        <translation>%1 desde la primera visita</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Since the first visit</source>
        <translation>Desde la primera visita</translation>
    </message>
    <message>
        <source>Since the visit before</source>
        <translation>Desde la visita anterior</translation>
    </message>
    <message>
        <source>Change target</source>
        <translation>Cambiar objetivo</translation>
    </message>
    <message>
        <source>Keeping the target</source>
        <translation>Guardando el objetivo</translation>
    </message>
    <message>
        <source>Dropping the target</source>
        <translation>Quitando el objetivo</translation>
    </message>
</context>
<context>
    <name>kempt::desk::QuestionsPanel</name>
    <message>
        <source>unknown</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>Enter it</source>
        <translation>Introducirlo</translation>
    </message>
    <message>
        <source>Enter it with the planned service: %1</source>
        <translation>Introducirlo en el servicio planeado: %1</translation>
    </message>
    <message>
        <source>To the record</source>
        <translation>Al historial</translation>
    </message>
    <message>
        <source>To the record of services: %1</source>
        <translation>Al historial de servicios: %1</translation>
    </message>
    <message>
        <source>Grade it</source>
        <translation>Valorarlo</translation>
    </message>
    <message>
        <source>To the grades: %1</source>
        <translation>A los grados: %1</translation>
    </message>
    <message>
        <source>Erase that answer…</source>
        <translation>Borrar esa respuesta…</translation>
    </message>
    <message>
        <source>Erase the answer: %1</source>
        <translation>Borrar la respuesta: %1</translation>
    </message>
    <message>
        <source>Erase the yes to “%1”?</source>
        <translation>¿Borrar el sí a «%1»?</translation>
    </message>
    <message>
        <source>It is kept for good because it speaks against services for good. Erase it only if it was written down by mistake.</source>
        <translation>Se guarda para siempre porque habla en contra de servicios para siempre. Bórrelo solo si se anotó por error.</translation>
    </message>
    <message>
        <source>Yes, told on %1. That is kept for good.</source>
        <translation>Sí, dicho el %1. Eso se guarda para siempre.</translation>
    </message>
    <message>
        <source>To check first</source>
        <translation>Por comprobar antes</translation>
    </message>
    <message>
        <source>A stop hangs on these</source>
        <translation>De estas depende un alto</translation>
    </message>
    <message>
        <source>A caution hangs on these</source>
        <translation>De estas depende una precaución</translation>
    </message>
    <message>
        <source>A note hangs on these</source>
        <translation>De estas depende una nota</translation>
    </message>
    <message>
        <source>Answered before</source>
        <translation>Ya contestadas</translation>
    </message>
    <message>
        <source>If so: %1</source>
        <translation>Si es así: %1</translation>
    </message>
    <message>
        <source>%1 still open. Y, N and U answer, Tab leads on.</source>
        <translation>Quedan %1. Contestan las teclas Y (sí), N (no) y U (no se sabe); Tab sigue.</translation>
    </message>
    <message>
        <source>Nothing that the rules ask for is open.</source>
        <translation>No queda abierto nada de lo que piden las reglas.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
</context>
<context>
    <name>kempt::desk::ReadingsPanel</name>
    <message>
        <source>Readings</source>
        <translation>Medidas</translation>
    </message>
    <message>
        <source>Light along the fibres. Dark line: all of it; mulberry: the surface highlight; dashed: the dull light below it; bar: its width at half height.</source>
        <translation>Luz a lo largo de las fibras. Línea oscura: toda; mora: el brillo de la superficie; a trazos: la luz apagada debajo; barra: su ancho a media altura.</translation>
    </message>
    <message>
        <source>measuring…</source>
        <translation>midiendo…</translation>
    </message>
    <message>
        <source>No readings from this drawing.</source>
        <translation>De este dibujo no sale ninguna medida.</translation>
    </message>
    <message>
        <source>following your hand…</source>
        <translation>siguiendo su mano…</translation>
    </message>
    <message>
        <source>Not given: %1</source>
        <translation>No se da: %1</translation>
    </message>
    <message>
        <source>95&#xa0;%: between %1 and %2</source>
        <translation>95&#xa0;%: entre %1 y %2</translation>
    </message>
    <message>
        <source>Could be measured on this photo: %1.</source>
        <translation>En esta foto se podría medir: %1.</translation>
    </message>
    <message>
        <source> or </source>
        <translation> o </translation>
    </message>
    <message>
        <source>two points</source>
        <translation>dos puntos</translation>
    </message>
    <message>
        <source>the gauge sheet</source>
        <translation>la hoja de medida</translation>
    </message>
    <message>
        <source>the gauge card</source>
        <translation>la tarjeta de medida</translation>
    </message>
    <message>
        <source>%1 pixels a mm, from %2</source>
        <translation>%1 píxeles por mm, de %2</translation>
    </message>
    <message>
        <source>tilted %1°</source>
        <translation>inclinada %1°</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>línea %1</translation>
    </message>
    <message>
        <source>No scale: neither card nor ruler</source>
        <translation>Sin escala: ni tarjeta ni regla</translation>
    </message>
</context>
<context>
    <name>kempt::desk::ReportPage</name>
    <message>
        <source>for the client to take home</source>
        <translation>para que la clienta se lo lleve</translation>
    </message>
    <message>
        <source>for the salon&apos;s own file, with every reading</source>
        <translation>para el archivo del salón, con todas las medidas</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>US Letter</source>
        <translation>Carta (EE. UU.)</translation>
    </message>
    <message>
        <source>your name or your salon&apos;s</source>
        <translation>su nombre o el de su salón</translation>
    </message>
    <message>
        <source>What it compares</source>
        <translation>Qué compara</translation>
    </message>
    <message>
        <source>Visit before</source>
        <translation>Visita de antes</translation>
    </message>
    <message>
        <source>Visit after</source>
        <translation>Visita de después</translation>
    </message>
    <message>
        <source>How it is made</source>
        <translation>Cómo se hace</translation>
    </message>
    <message>
        <source>This copy is</source>
        <translation>Esta copia es</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papel</translation>
    </message>
    <message>
        <source>Prepared by</source>
        <translation>Preparado por</translation>
    </message>
    <message>
        <source>She agrees today</source>
        <translation>Acepta hoy</translation>
    </message>
    <message>
        <source>Save the report…</source>
        <translation>Guardar el informe…</translation>
    </message>
    <message>
        <source>Reading the visits</source>
        <translation>Leyendo las visitas</translation>
    </message>
    <message>
        <source>Report for %1</source>
        <translation>Informe para %1</translation>
    </message>
    <message>
        <source>the first that compares</source>
        <translation>la primera comparable</translation>
    </message>
    <message>
        <source>the last that compares</source>
        <translation>la última comparable</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Informe</translation>
    </message>
    <message>
        <source>%1 has not agreed that photos leave this book. Ask her: without her yes the report is made without photos and says so.</source>
        <translation>%1 no ha aceptado que las fotos salgan de este libro. Pregúntele: sin su sí, el informe se hace sin fotos y lo dice.</translation>
    </message>
    <message>
        <source>Keeping her consent</source>
        <translation>Guardando su consentimiento</translation>
    </message>
    <message>
        <source>Save the report</source>
        <translation>Guardar el informe</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>report %1.pdf</source>
        <translation>informe %1.pdf</translation>
    </message>
    <message>
        <source>Making the report</source>
        <translation>Haciendo el informe</translation>
    </message>
    <message>
        <source>The report is saved as %1.</source>
        <translation>El informe se guardó como %1.</translation>
    </message>
    <message>
        <source>Save its pictures</source>
        <translation>Guardar sus imágenes</translation>
    </message>
    <message>
        <source>Save the readings</source>
        <translation>Guardar las medidas</translation>
    </message>
    <message>
        <source>Table (*.csv)</source>
        <translation>Tabla (*.csv)</translation>
    </message>
    <message>
        <source>readings %1.csv</source>
        <translation>medidas %1.csv</translation>
    </message>
    <message>
        <source>Condition report</source>
        <translation>Informe de estado</translation>
    </message>
    <message>
        <source>Printing the report</source>
        <translation>Imprimiendo el informe</translation>
    </message>
    <message>
        <source>The report is on its way to the printer.</source>
        <translation>El informe va camino de la impresora.</translation>
    </message>
    <message>
        <source>Saving the pictures</source>
        <translation>Guardando las imágenes</translation>
    </message>
    <message>
        <source>%1 saved in %2.</source>
        <translation>%1 guardadas en %2.</translation>
    </message>
    <message>
        <source>picture</source>
        <translation>imagen</translation>
    </message>
    <message>
        <source>pictures</source>
        <translation>imágenes</translation>
    </message>
    <message>
        <source>Saving the readings</source>
        <translation>Guardando las medidas</translation>
    </message>
    <message>
        <source>The readings are saved as %1.</source>
        <translation>Las medidas se guardaron como %1.</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Página %1 de %2</translation>
    </message>
    <message>
        <source>Eyes in the pictures…</source>
        <translation>Ojos en las imágenes…</translation>
    </message>
    <message>
        <source>Eyes in the pictures</source>
        <translation>Ojos en las imágenes</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Imprimir…</translation>
    </message>
    <message>
        <source>Save its pictures…</source>
        <translation>Guardar sus imágenes…</translation>
    </message>
    <message>
        <source>Save the readings…</source>
        <translation>Guardar las medidas…</translation>
    </message>
    <message>
        <source>Save the readings as a table</source>
        <translation>Guardar las medidas como tabla</translation>
    </message>
    <message>
        <source>What it tells</source>
        <translation>Qué cuenta</translation>
    </message>
    <message>
        <source>before and after photos</source>
        <translation>fotos de antes y después</translation>
    </message>
    <message>
        <source>charts</source>
        <translation>gráficos</translation>
    </message>
    <message>
        <source>the way to the targets</source>
        <translation>el camino a los objetivos</translation>
    </message>
    <message>
        <source>services</source>
        <translation>servicios</translation>
    </message>
    <message>
        <source>what the hair has been through</source>
        <translation>por lo que ha pasado el cabello</translation>
    </message>
    <message>
        <source>grades</source>
        <translation>grados</translation>
    </message>
    <message>
        <source>what is planned</source>
        <translation>lo que está planeado</translation>
    </message>
    <message>
        <source>next dates and care at home</source>
        <translation>próximas fechas y cuidados en casa</translation>
    </message>
    <message>
        <source>what was left out, and why</source>
        <translation>lo que quedó fuera y por qué</translation>
    </message>
    <message>
        <source>Who, when, the verdicts in short, how it was measured and the cautions always stand.</source>
        <translation>Quién, cuándo, los veredictos en breve, cómo se midió y las precauciones están siempre.</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Leyendo…</translation>
    </message>
    <message>
        <source>Putting the report together…</source>
        <translation>Preparando el informe…</translation>
    </message>
    <message>
        <source>Putting the report together</source>
        <translation>Preparando el informe</translation>
    </message>
    <message>
        <source>Laying out the pages</source>
        <translation>Componiendo las páginas</translation>
    </message>
    <message>
        <source>Drawing a page</source>
        <translation>Dibujando una página</translation>
    </message>
    <message>
        <source>She does not want her face seen. Until you have looked at every photo, those pictures are left out.</source>
        <translation>No quiere que se le vea la cara. Hasta que haya mirado cada foto, esas imágenes quedan fuera.</translation>
    </message>
    <message>
        <source>Where a face was found its eyes are hidden. Faces are missed now and then: look before the photos leave.</source>
        <translation>Donde se encontró una cara se tapan los ojos. A veces se escapa alguna: mire antes de que salgan las fotos.</translation>
    </message>
    <message>
        <source>What the report holds</source>
        <translation>Qué contiene el informe</translation>
    </message>
</context>
<context>
    <name>kempt::desk::SafeDialog</name>
    <message>
        <source>Safe keeping</source>
        <translation>Copias de seguridad</translation>
    </message>
    <message>
        <source>Back up to a folder…</source>
        <translation>Copiar en una carpeta…</translation>
    </message>
    <message>
        <source>The folder for the backup</source>
        <translation>La carpeta para la copia</translation>
    </message>
    <message>
        <source>Backup</source>
        <translation>Copia de seguridad</translation>
    </message>
    <message>
        <source>A whole copy of the book with every photo, made while it stays open, and read back at once. On another disk it also outlives this computer. Whoever has the copy can read it: keep it as you keep the book.</source>
        <translation>Una copia entera del libro con todas las fotos, hecha sin cerrarlo y releída al momento. En otro disco sobrevive también a este ordenador. Quien tenga la copia puede leerla: guárdela como guarda el libro.</translation>
    </message>
    <message>
        <source>Check a backup…</source>
        <translation>Revisar una copia…</translation>
    </message>
    <message>
        <source>The backup to check</source>
        <translation>La copia que se revisa</translation>
    </message>
    <message>
        <source>Is a backup sound?</source>
        <translation>¿Está bien una copia?</translation>
    </message>
    <message>
        <source>Reads all of it through, every photo against its fingerprint. The backup is only read.</source>
        <translation>La lee entera, cada foto contra su huella. La copia solo se lee.</translation>
    </message>
    <message>
        <source>Bring a backup back…</source>
        <translation>Recuperar una copia…</translation>
    </message>
    <message>
        <source>The backup to bring back</source>
        <translation>La copia que se recupera</translation>
    </message>
    <message>
        <source>Bring a backup back</source>
        <translation>Recuperar una copia</translation>
    </message>
    <message>
        <source>It becomes a new book under a name that you choose. No book that is there already is replaced, the open one neither.</source>
        <translation>Se convierte en un libro nuevo con el nombre que usted elija. No se sustituye ningún libro que ya esté, tampoco el abierto.</translation>
    </message>
    <message>
        <source>How far the work is</source>
        <translation>Por dónde va el trabajo</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Detener</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <source>Last one: %1</source>
        <translation>Última: %1</translation>
    </message>
    <message>
        <source>It is not there any more, or its disk is not connected: %1</source>
        <translation>Ya no está ahí, o su disco no está conectado: %1</translation>
    </message>
    <message>
        <source>Kempt books (*.kempt);;All files (*)</source>
        <translation>Libros de Kempt (*.kempt);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Name of the new book</source>
        <translation>Nombre del libro nuevo</translation>
    </message>
    <message>
        <source>brought back.kempt</source>
        <translation>recuperado.kempt</translation>
    </message>
    <message>
        <source>Stopping: what was begun is taken away again</source>
        <translation>Deteniendo: lo empezado se retira</translation>
    </message>
    <message>
        <source>Copying the book</source>
        <translation>Copiando el libro</translation>
    </message>
    <message>
        <source>The backup is made and was read back.</source>
        <translation>La copia está hecha y se ha releído.</translation>
    </message>
    <message>
        <source>Stopped. No copy was kept; the book is as it was.</source>
        <translation>Detenido. No se guardó ninguna copia; el libro está como estaba.</translation>
    </message>
    <message>
        <source>No backup was made</source>
        <translation>No se hizo ninguna copia</translation>
    </message>
    <message>
        <source>Reading the backup through</source>
        <translation>Leyendo la copia entera</translation>
    </message>
    <message>
        <source>Checking a backup</source>
        <translation>Revisando una copia</translation>
    </message>
    <message>
        <source>Stopped. The backup was not touched.</source>
        <translation>Detenido. La copia no se tocó.</translation>
    </message>
    <message>
        <source>This backup cannot be used</source>
        <translation>Esta copia no se puede usar</translation>
    </message>
    <message>
        <source>This backup is sound.</source>
        <translation>Esta copia está bien.</translation>
    </message>
    <message>
        <source>%1, %2, %3, %4.</source>
        <translation>%1, %2, %3, %4.</translation>
    </message>
    <message>
        <source>client</source>
        <translation>clienta</translation>
    </message>
    <message>
        <source>clients</source>
        <translation>clientas</translation>
    </message>
    <message>
        <source>visit</source>
        <translation>visita</translation>
    </message>
    <message>
        <source>visits</source>
        <translation>visitas</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>foto</translation>
    </message>
    <message>
        <source>photos</source>
        <translation>fotos</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>medida</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>medidas</translation>
    </message>
    <message>
        <source>This backup is damaged.</source>
        <translation>Esta copia está dañada.</translation>
    </message>
    <message>
        <source>The first of what was found (%1): %2</source>
        <translation>Lo primero de lo hallado (%1): %2</translation>
    </message>
    <message>
        <source>It was not touched. Make a new backup of the book, on another disk.</source>
        <translation>No se tocó. Haga una copia nueva del libro, en otro disco.</translation>
    </message>
    <message>
        <source>Checking the backup and bringing it back</source>
        <translation>Revisando la copia y recuperándola</translation>
    </message>
    <message>
        <source>Bringing a backup back</source>
        <translation>Recuperando una copia</translation>
    </message>
    <message>
        <source>The backup stands as a new book.</source>
        <translation>La copia es ahora un libro nuevo.</translation>
    </message>
    <message>
        <source>Open it</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>The backup was not brought back</source>
        <translation>La copia no se recuperó</translation>
    </message>
</context>
<context>
    <name>kempt::desk::SectionPicker</name>
    <message>
        <source>Head sections: the whole head, unless some are chosen</source>
        <translation>Secciones de la cabeza: toda, si no se elige ninguna</translation>
    </message>
    <message>
        <source>Head sections: only those chosen</source>
        <translation>Secciones de la cabeza: solo las elegidas</translation>
    </message>
    <message>
        <source>Head section %1</source>
        <translation>Sección %1</translation>
    </message>
</context>
<context>
    <name>kempt::desk::ServiceForm</name>
    <message>
        <source>Planned: %1</source>
        <translation>Planeado: %1</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Take %1 off the plan</source>
        <translation>Quitar %1 del plan</translation>
    </message>
    <message>
        <source>Nothing else has to be said of it.</source>
        <translation>No hay que decir nada más de ello.</translation>
    </message>
    <message>
        <source>Beginning, from the scalp,</source>
        <translation>Comienzo, desde el cuero cabelludo,</translation>
    </message>
    <message>
        <source>the scalp</source>
        <translation>el cuero cabelludo</translation>
    </message>
    <message>
        <source>End, from the scalp,</source>
        <translation>Final, desde el cuero cabelludo,</translation>
    </message>
    <message>
        <source>the ends</source>
        <translation>las puntas</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>To</source>
        <translation>A</translation>
    </message>
    <message>
        <source>new growth only</source>
        <translation>solo el crecimiento</translation>
    </message>
    <message>
        <source>New growth only</source>
        <translation>Solo el crecimiento</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>sin anotar</translation>
    </message>
    <message>
        <source>%1 (up to %2)</source>
        <translation>%1 (hasta %2)</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Fuerza</translation>
    </message>
    <message>
        <source>not chosen</source>
        <translation>sin elegir</translation>
    </message>
    <message>
        <source>Minutes planned</source>
        <translation>Minutos previstos</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>Maker&apos;s maximum</source>
        <translation>Máximo del fabricante</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatura</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>Passes</source>
        <translation>Pasadas</translation>
    </message>
    <message>
        <source>times</source>
        <translation>veces</translation>
    </message>
    <message>
        <source>Passes over a strand (up to %1)</source>
        <translation>Pasadas por mechón (hasta %1)</translation>
    </message>
    <message>
        <source>passed</source>
        <translation>superada</translation>
    </message>
    <message>
        <source>failed</source>
        <translation>no superada</translation>
    </message>
    <message>
        <source>not made</source>
        <translation>no hecha</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>Strand test on the weakest hair</source>
        <translation>Prueba de mechón en el cabello más débil</translation>
    </message>
    <message>
        <source>Patch test with this very product</source>
        <translation>Prueba de alergia con este mismo producto</translation>
    </message>
    <message>
        <source>Hours since it was put on</source>
        <translation>Horas desde que se puso</translation>
    </message>
    <message>
        <source>h</source>
        <translation>h</translation>
    </message>
    <message>
        <source>Product touches the scalp</source>
        <translation>El producto toca el cuero cabelludo</translation>
    </message>
    <message>
        <source>Hair is wet</source>
        <translation>El cabello está mojado</translation>
    </message>
    <message>
        <source>Heat protectant</source>
        <translation>Protector térmico</translation>
    </message>
    <message>
        <source>Product releases formaldehyde</source>
        <translation>El producto libera formaldehído</translation>
    </message>
    <message>
        <source>Safety data sheet at hand</source>
        <translation>Ficha de datos de seguridad a mano</translation>
    </message>
    <message>
        <source>To be done at home</source>
        <translation>Para hacer en casa</translation>
    </message>
    <message>
        <source>Style pulls on the hair</source>
        <translation>El peinado tira del cabello</translation>
    </message>
    <message>
        <source>Hair is added</source>
        <translation>Se añade cabello</translation>
    </message>
</context>
<context>
    <name>kempt::desk::ServicePage</name>
    <message>
        <source>What was done</source>
        <translation>Qué se hizo</translation>
    </message>
    <message>
        <source>Day of the service</source>
        <translation>Día del servicio</translation>
    </message>
    <message>
        <source>Erase</source>
        <translation>Borrar</translation>
    </message>
    <message>
        <source>Erase this service</source>
        <translation>Borrar este servicio</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Reading the service</source>
        <translation>Leyendo el servicio</translation>
    </message>
    <message>
        <source>Visit</source>
        <translation>Visita</translation>
    </message>
    <message>
        <source>Service</source>
        <translation>Servicio</translation>
    </message>
    <message>
        <source>%1  ·  %2</source>
        <translation>%1  ·  %2</translation>
    </message>
    <message>
        <source>Keeping the service</source>
        <translation>Guardando el servicio</translation>
    </message>
    <message>
        <source>what was entered last</source>
        <translation>lo último introducido</translation>
    </message>
    <message>
        <source>the last change of this service</source>
        <translation>el último cambio de este servicio</translation>
    </message>
    <message>
        <source>Erasing a service</source>
        <translation>Borrando un servicio</translation>
    </message>
</context>
<context>
    <name>kempt::desk::ServiceRecord</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>Length that was left</source>
        <translation>Largo que quedó</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>Length that was left, stretched straight</source>
        <translation>Largo que quedó, estirado</translation>
    </message>
    <message>
        <source>by a stylist</source>
        <translation>por una profesional</translation>
    </message>
    <message>
        <source>at home</source>
        <translation>en casa</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>other</source>
        <translation>otro</translation>
    </message>
    <message>
        <source>Which part of the hair</source>
        <translation>Qué parte del cabello</translation>
    </message>
    <message>
        <source>Which part of the hair, as long as it was that day</source>
        <translation>Qué parte del cabello, con el largo de ese día</translation>
    </message>
    <message>
        <source>Beginning, from the scalp</source>
        <translation>Comienzo, desde el cuero cabelludo</translation>
    </message>
    <message>
        <source>the scalp</source>
        <translation>el cuero cabelludo</translation>
    </message>
    <message>
        <source>End, from the scalp</source>
        <translation>Final, desde el cuero cabelludo</translation>
    </message>
    <message>
        <source>the ends</source>
        <translation>las puntas</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>To</source>
        <translation>A</translation>
    </message>
    <message>
        <source>How long her hair was is not known: mid-shaft and ends need it.</source>
        <translation>No se sabe qué largo tenía: hace falta para medios y puntas.</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>With what, how long</source>
        <translation>Con qué, cuánto tiempo</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Fuerza</translation>
    </message>
    <message>
        <source>Minutes, first stroke to rinse</source>
        <translation>Minutos, de la primera pasada al aclarado</translation>
    </message>
    <message>
        <source>Maker&apos;s maximum</source>
        <translation>Máximo del fabricante</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatura</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>Passes over a strand</source>
        <translation>Pasadas por mechón</translation>
    </message>
    <message>
        <source>times</source>
        <translation>veces</translation>
    </message>
    <message>
        <source>passed</source>
        <translation>superada</translation>
    </message>
    <message>
        <source>failed</source>
        <translation>no superada</translation>
    </message>
    <message>
        <source>none, or unknown</source>
        <translation>ninguna, o no se sabe</translation>
    </message>
    <message>
        <source>Tests before it</source>
        <translation>Pruebas previas</translation>
    </message>
    <message>
        <source>Strand test</source>
        <translation>Prueba de mechón</translation>
    </message>
    <message>
        <source>Patch test</source>
        <translation>Prueba de alergia</translation>
    </message>
    <message>
        <source>Days before it on which the patch test was put on</source>
        <translation>Días antes en que se puso la prueba de alergia</translation>
    </message>
    <message>
        <source>days before</source>
        <translation>días antes</translation>
    </message>
    <message>
        <source>Where the patch test was put</source>
        <translation>Dónde se puso la prueba de alergia</translation>
    </message>
    <message>
        <source>behind the left ear</source>
        <translation>detrás de la oreja izquierda</translation>
    </message>
    <message>
        <source>Put on</source>
        <translation>Puesta</translation>
    </message>
    <message>
        <source>Where on the skin</source>
        <translation>En qué parte de la piel</translation>
    </message>
    <message>
        <source>How it turned out</source>
        <translation>Cómo quedó</translation>
    </message>
    <message>
        <source>Reaction of scalp or skin</source>
        <translation>Reacción del cuero cabelludo o la piel</translation>
    </message>
    <message>
        <source>A record only: it says nothing about what the hair can take. Burning, blisters, swelling or pain are for a doctor.</source>
        <translation>Solo es un registro: no dice nada de lo que admite el cabello. Ardor, ampollas, hinchazón o dolor son cosa del médico.</translation>
    </message>
    <message>
        <source>Result, in your words</source>
        <translation>Resultado, con sus palabras</translation>
    </message>
    <message>
        <source>even, a little dry at the ends</source>
        <translation>uniforme, algo seco en las puntas</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>product, mixture, anything else</source>
        <translation>producto, mezcla, lo que sea</translation>
    </message>
    <message>
        <source>Its line of demarcation, from the scalp</source>
        <translation>Su línea de demarcación, desde el cuero cabelludo</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>sin medir</translation>
    </message>
    <message>
        <source>Day on which its line was measured</source>
        <translation>Día en que se midió su línea</translation>
    </message>
    <message>
        <source>Its line of demarcation now, by tape</source>
        <translation>Su línea de demarcación ahora, con cinta</translation>
    </message>
    <message>
        <source>Measured on</source>
        <translation>Medido el</translation>
    </message>
    <message>
        <source>Its day is still to come.</source>
        <translation>Su día aún no ha llegado.</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>planeado</translation>
    </message>
    <message>
        <source>Done or still planned</source>
        <translation>Hecho o aún planeado</translation>
    </message>
    <message>
        <source>By whom</source>
        <translation>Por quién</translation>
    </message>
</context>
<context>
    <name>kempt::desk::ServicesPanel</name>
    <message>
        <source>Services</source>
        <translation>Servicios</translation>
    </message>
    <message>
        <source>Add a service</source>
        <translation>Añadir un servicio</translation>
    </message>
    <message>
        <source>None at this visit.</source>
        <translation>Ninguno en esta visita.</translation>
    </message>
    <message>
        <source>None written down yet.</source>
        <translation>Aún ninguno anotado.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Open %1</source>
        <translation>Abrir %1</translation>
    </message>
    <message>
        <source>Erase %1</source>
        <translation>Borrar %1</translation>
    </message>
    <message>
        <source>Adding a service</source>
        <translation>Añadiendo un servicio</translation>
    </message>
    <message>
        <source>Erasing a service</source>
        <translation>Borrando un servicio</translation>
    </message>
    <message>
        <source>Putting a service back</source>
        <translation>Recuperando un servicio</translation>
    </message>
    <message>
        <source>Put back what was erased</source>
        <translation>Recuperar lo borrado</translation>
    </message>
    <message>
        <source>Put back the %1 of %2</source>
        <translation>Recuperar %1 del %2</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <source>It was done: %1</source>
        <translation>Se hizo: %1</translation>
    </message>
    <message>
        <source>Planned for %1. Was it done?</source>
        <translation>Planeado para el %1. ¿Se hizo?</translation>
    </message>
    <message>
        <source>Marking a service as done</source>
        <translation>Marcando un servicio como hecho</translation>
    </message>
</context>
<context>
    <name>kempt::desk::SettingsDialog</name>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Text size</source>
        <translation>Tamaño del texto</translation>
    </message>
    <message>
        <source>Text size in per cent</source>
        <translation>Tamaño del texto en por ciento</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Colours for a</source>
        <translation>Colores para una</translation>
    </message>
    <message>
        <source>light room</source>
        <translation>sala clara</translation>
    </message>
    <message>
        <source>dim room</source>
        <translation>sala en penumbra</translation>
    </message>
    <message>
        <source>Lengths in</source>
        <translation>Longitudes en</translation>
    </message>
    <message>
        <source>millimetres</source>
        <translation>milímetros</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>pulgadas</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <source>Save the gauge sheet</source>
        <translation>Guardar la hoja de medida</translation>
    </message>
    <message>
        <source>Save the gauge card</source>
        <translation>Guardar la tarjeta de medida</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>gauge sheet.pdf</source>
        <translation>hoja de medida.pdf</translation>
    </message>
    <message>
        <source>gauge card.pdf</source>
        <translation>tarjeta de medida.pdf</translation>
    </message>
    <message>
        <source>Drawing the gauge sheet</source>
        <translation>Dibujando la hoja de medida</translation>
    </message>
    <message>
        <source>Drawing the gauge card</source>
        <translation>Dibujando la tarjeta de medida</translation>
    </message>
    <message>
        <source>The gauge sheet is saved as %1.</source>
        <translation>La hoja de medida se guardó como %1.</translation>
    </message>
    <message>
        <source>The gauge card is saved as %1.</source>
        <translation>La tarjeta de medida se guardó como %1.</translation>
    </message>
    <message>
        <source>Save the card to print…</source>
        <translation>Guardar la tarjeta para imprimir…</translation>
    </message>
    <message>
        <source>Save the sheet to print…</source>
        <translation>Guardar la hoja para imprimir…</translation>
    </message>
    <message>
        <source>Check line of the printed gauge card</source>
        <translation>Línea de control de la tarjeta impresa</translation>
    </message>
    <message>
        <source>Measure the long check line on your print with a ruler. It should be 50 mm; type what it is.</source>
        <translation>Mida con una regla la línea larga de control en su impresión. Debe medir 50 mm; escriba lo que mide.</translation>
    </message>
    <message>
        <source> mm</source>
        <translation> mm</translation>
    </message>
    <message>
        <source>Measured length of the check line</source>
        <translation>Largo medido de la línea de control</translation>
    </message>
    <message>
        <source>Reading the settings</source>
        <translation>Leyendo los ajustes</translation>
    </message>
    <message>
        <source>Keeping the settings</source>
        <translation>Guardando los ajustes</translation>
    </message>
    <message>
        <source>Kept. Readings from now on are corrected by it; older ones stay as they were measured.</source>
        <translation>Guardado. Las medidas desde ahora se corrigen con ello; las anteriores quedan como se midieron.</translation>
    </message>
    <message>
        <source>Look and units</source>
        <translation>Aspecto y unidades</translation>
    </message>
    <message>
        <source>text %1 %</source>
        <translation>texto %1 %</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>as the system</source>
        <translation>como el sistema</translation>
    </message>
    <message>
        <source>as the system: %1</source>
        <translation>como el sistema: %1</translation>
    </message>
    <message>
        <source>Language of the windows</source>
        <translation>Idioma de las ventanas</translation>
    </message>
    <message>
        <source>It changes at once, and the pages are made anew. Dates and numbers follow it. What you and your clients wrote stays as it is.</source>
        <translation>Cambia al momento y las páginas se hacen de nuevo. Las fechas y los números lo siguen. Lo que escribieron usted y sus clientas queda como está.</translation>
    </message>
    <message>
        <source>Still English in every language: the report and what is saved as PDF, tables and calendars, the names of published sources, the command line, and rare messages of trouble. Answer keys stay Y, N and U.</source>
        <translation>Sigue en inglés en todos los idiomas: el informe y lo que se guarda como PDF, tablas y calendarios, los nombres de las fuentes publicadas, la línea de órdenes y los avisos de problemas poco frecuentes. Las teclas de respuesta siguen siendo Y, N y U.</translation>
    </message>
    <message>
        <source>Paper and gauge card</source>
        <translation>Papel y tarjeta de medida</translation>
    </message>
    <message>
        <source>US Letter</source>
        <translation>Carta (EE. UU.)</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Paper of reports, card and sheet</source>
        <translation>Papel de informes, tarjeta y hoja</translation>
    </message>
    <message>
        <source>Card and sheet are printed, and the printer corrected, with a book open.</source>
        <translation>La tarjeta y la hoja se imprimen, y la impresora se corrige, con un libro abierto.</translation>
    </message>
    <message>
        <source>Gauge card and gauge sheet</source>
        <translation>Tarjeta y hoja de medida</translation>
    </message>
    <message>
        <source>Print at 100 %, without fitting to the page: the card on matt card, to cut out; the sheet, a whole page, lies behind ends and combed-out strands.</source>
        <translation>Imprima al 100 %, sin ajustar a la página: la tarjeta en cartulina mate, para recortar; la hoja, una página entera, va detrás de las puntas y de las hebras peinadas.</translation>
    </message>
    <message>
        <source>none proposed</source>
        <translation>ninguno propuesto</translation>
    </message>
    <message numerus="yes">
        <source>%n proposed</source>
        <translation>
            <numerusform>%n propuesto</numerusform>
            <numerusform>%n propuestos</numerusform>
        </translation>
    </message>
    <message>
        <source>Targets</source>
        <translation>Objetivos</translation>
    </message>
    <message>
        <source>What is proposed for a client who has no target yet. It counts for nobody until you set it on her page.</source>
        <translation>Lo que se propone para una clienta sin objetivo. No cuenta para nadie hasta que usted lo ponga en su página.</translation>
    </message>
    <message>
        <source>in</source>
        <translation>pulg.</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>Proposed target: %1</source>
        <translation>Objetivo propuesto: %1</translation>
    </message>
    <message>
        <source>Photos from the phone</source>
        <translation>Fotos del teléfono</translation>
    </message>
    <message>
        <source>no folder is watched</source>
        <translation>no se vigila ninguna carpeta</translation>
    </message>
    <message>
        <source>Watched folder</source>
        <translation>Carpeta vigilada</translation>
    </message>
    <message>
        <source>Choose the folder…</source>
        <translation>Elegir la carpeta…</translation>
    </message>
    <message>
        <source>Watch none</source>
        <translation>No vigilar ninguna</translation>
    </message>
    <message>
        <source>The folder that your phone copies its pictures to. New ones come up for you to sort; nothing goes into a record by itself, and the files stay where they are.</source>
        <translation>La carpeta a la que su teléfono copia sus imágenes. Las nuevas aparecen para que usted las ordene; nada entra solo en un historial y los archivos se quedan donde están.</translation>
    </message>
    <message>
        <source>The folder that your phone copies to</source>
        <translation>La carpeta a la que copia su teléfono</translation>
    </message>
    <message>
        <source>Safe keeping</source>
        <translation>Copias de seguridad</translation>
    </message>
    <message>
        <source>no book is open</source>
        <translation>no hay ningún libro abierto</translation>
    </message>
    <message>
        <source>A backup is a whole copy of the book, made while it stays open. Keep it on another disk.</source>
        <translation>Una copia de seguridad es una copia entera del libro, hecha sin cerrarlo. Guárdela en otro disco.</translation>
    </message>
    <message>
        <source>days</source>
        <translation>días</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nunca</translation>
    </message>
    <message>
        <source>Remind me when the last backup is older than</source>
        <translation>Avisarme si la última copia tiene más de</translation>
    </message>
    <message>
        <source>A week to begin with: what a week brought is still remembered and can be entered again.</source>
        <translation>Para empezar, una semana: lo de una semana aún se recuerda y se puede volver a introducir.</translation>
    </message>
    <message>
        <source>Backup and restore…</source>
        <translation>Copiar y recuperar…</translation>
    </message>
</context>
<context>
    <name>kempt::desk::ShinePlot</name>
    <message>
        <source>Light along the fibres</source>
        <translation>Luz a lo largo de las fibras</translation>
    </message>
    <message>
        <source>Curve of the light from the root side over %1; above half its height over %2.</source>
        <translation>Curva de la luz desde el lado de la raíz sobre %1; por encima de media altura sobre %2.</translation>
    </message>
    <message>
        <source>roots</source>
        <translation>raíces</translation>
    </message>
</context>
<context>
    <name>kempt::desk::SideBySide</name>
    <message>
        <source>Both pictures side by side</source>
        <translation>Las dos imágenes, una al lado de otra</translation>
    </message>
    <message>
        <source>Left: %1. Right: %2. Plus and minus go nearer and farther in both, arrows move both, 0 shows the whole.</source>
        <translation>Izquierda: %1. Derecha: %2. Más y menos acercan y alejan ambas, las flechas mueven ambas, 0 muestra todo.</translation>
    </message>
</context>
<context>
    <name>kempt::desk::StartPage</name>
    <message>
        <source>Kempt</source>
        <translation>Kempt</translation>
    </message>
    <message>
        <source>A row of strands coming back, for decoration</source>
        <translation>Una fila de hebras que vuelven a crecer, como adorno</translation>
    </message>
    <message>
        <source>Dated, calibrated photographs of hair that is coming back:
what it is like today, and whether the change is real.</source>
        <translation>Fotografías fechadas y calibradas del cabello que vuelve:
cómo está hoy y si el cambio es real.</translation>
    </message>
    <message>
        <source>Open a book…</source>
        <translation>Abrir un libro…</translation>
    </message>
    <message>
        <source>Start a new book…</source>
        <translation>Empezar un libro nuevo…</translation>
    </message>
    <message>
        <source>Look round in the demo</source>
        <translation>Mirar la demostración</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Detener</translation>
    </message>
    <message>
        <source>Opened lately</source>
        <translation>Abiertos hace poco</translation>
    </message>
    <message>
        <source>Open the book %1</source>
        <translation>Abrir el libro %1</translation>
    </message>
    <message>
        <source>Start a new book</source>
        <translation>Empezar un libro nuevo</translation>
    </message>
    <message>
        <source>Open a book</source>
        <translation>Abrir un libro</translation>
    </message>
    <message>
        <source>Kempt books (*.kempt);;All files (*)</source>
        <translation>Libros de Kempt (*.kempt);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>my clients.kempt</source>
        <translation>mis clientas.kempt</translation>
    </message>
    <message>
        <source>Opening %1</source>
        <translation>Abriendo %1</translation>
    </message>
    <message>
        <source>Opening the book</source>
        <translation>Abriendo el libro</translation>
    </message>
    <message>
        <source>Making %1</source>
        <translation>Creando %1</translation>
    </message>
    <message>
        <source>Making the book</source>
        <translation>Creando el libro</translation>
    </message>
    <message>
        <source>Filling the demo&apos;s book: photos are taken in and measured once</source>
        <translation>Llenando el libro de la demostración: las fotos se incorporan y se miden una vez</translation>
    </message>
    <message>
        <source>Filling the demo</source>
        <translation>Llenando la demostración</translation>
    </message>
    <message>
        <source>Filling the demo&apos;s book: %1</source>
        <translation>Llenando el libro de la demostración: %1</translation>
    </message>
    <message>
        <source>Bring a backup back…</source>
        <translation>Recuperar una copia…</translation>
    </message>
</context>
<context>
    <name>kempt::desk::StepsPanel</name>
    <message>
        <source>Steps of this visit, and what is still missing</source>
        <translation>Pasos de esta visita y lo que aún falta</translation>
    </message>
    <message>
        <source>This visit, step by step</source>
        <translation>Esta visita, paso a paso</translation>
    </message>
    <message>
        <source>Leave it at any step; what was entered is kept.</source>
        <translation>Déjela en cualquier paso; lo introducido queda guardado.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Draw it</source>
        <translation>Dibujarla</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Añadir</translation>
    </message>
    <message>
        <source>Draw the edge line: %1</source>
        <translation>Dibujar la línea del contorno: %1</translation>
    </message>
    <message>
        <source>Add photos of the %1</source>
        <translation>Añadir fotos: %1</translation>
    </message>
</context>
<context>
    <name>kempt::desk::StrandBox</name>
    <message>
        <source>Not hair</source>
        <translation>No es cabello</translation>
    </message>
    <message>
        <source>Takes the chosen strand out of the count (Delete)</source>
        <translation>Quita del recuento la hebra elegida (Supr)</translation>
    </message>
    <message>
        <source>Join</source>
        <translation>Unir</translation>
    </message>
    <message>
        <source>The chosen strand and the next one that you choose are one hair (J)</source>
        <translation>La hebra elegida y la siguiente que elija son un mismo cabello (J)</translation>
    </message>
    <message>
        <source>Take all corrections back</source>
        <translation>Deshacer todas las correcciones</translation>
    </message>
    <message>
        <source>%1 taken out by hand</source>
        <translation>%1 quitadas a mano</translation>
    </message>
    <message>
        <source>strand</source>
        <translation>hebra</translation>
    </message>
    <message>
        <source>strands</source>
        <translation>hebras</translation>
    </message>
    <message>
        <source>%1 by hand</source>
        <translation>%1 a mano</translation>
    </message>
    <message>
        <source>join</source>
        <translation>unión</translation>
    </message>
    <message>
        <source>joins</source>
        <translation>uniones</translation>
    </message>
    <message>
        <source>Now choose the other part of the same hair, here or on the photo.</source>
        <translation>Ahora elija la otra parte del mismo cabello, aquí o en la foto.</translation>
    </message>
    <message>
        <source>Is this strand wrong?</source>
        <translation>¿Esta hebra está mal?</translation>
    </message>
    <message>
        <source>Choose a strand that was traced wrongly, here or on the photo, to correct it.</source>
        <translation>Elija, aquí o en la foto, una hebra mal trazada para corregirla.</translation>
    </message>
    <message>
        <source>Do not join</source>
        <translation>No unir</translation>
    </message>
    <message>
        <source>Join with another</source>
        <translation>Unir con otra</translation>
    </message>
</context>
<context>
    <name>kempt::desk::StrandList</name>
    <message>
        <source>%1 or more</source>
        <translation>%1 o más</translation>
    </message>
    <message>
        <source>curve %1</source>
        <translation>curva %1</translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation>dudosa</translation>
    </message>
    <message>
        <source>Strands, longest first</source>
        <translation>Hebras, primero las más largas</translation>
    </message>
</context>
<context>
    <name>kempt::desk::StrandView</name>
    <message>
        <source>The hair from scalp to ends, and what it has been through</source>
        <translation>El cabello del cuero cabelludo a las puntas, y por lo que ha pasado</translation>
    </message>
</context>
<context>
    <name>kempt::desk::StripFiller</name>
    <message>
        <source>Reading the visits</source>
        <translation>Leyendo las visitas</translation>
    </message>
    <message>
        <source>Opening the photo that all are laid over</source>
        <translation>Abriendo la foto sobre la que se superponen todas</translation>
    </message>
    <message>
        <source>Laying the photos of all visits over each other</source>
        <translation>Superponiendo las fotos de todas las visitas</translation>
    </message>
</context>
<context>
    <name>kempt::desk::StripPanel</name>
    <message>
        <source>Stop</source>
        <translation>Detener</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Leyendo…</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>Go on laying the photos</source>
        <translation>Seguir superponiendo las fotos</translation>
    </message>
    <message>
        <source>Stop laying the photos</source>
        <translation>Dejar de superponer las fotos</translation>
    </message>
    <message>
        <source>No visit has a photo of this view.</source>
        <translation>Ninguna visita tiene foto de esta vista.</translation>
    </message>
    <message>
        <source>%1 of %2 photos are laid over that of %3.</source>
        <translation>%1 de %2 fotos superpuestas a la del %3.</translation>
    </message>
    <message>
        <source>All laid over the photo of %1. Enter, or two clicks, compares one with it.</source>
        <translation>Todas superpuestas a la foto del %1. Intro, o dos clics, compara una con ella.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
</context>
<context>
    <name>kempt::desk::TimeStrip</name>
    <message>
        <source>All visits, one beside the other</source>
        <translation>Todas las visitas, una al lado de otra</translation>
    </message>
    <message>
        <source>no photo</source>
        <translation>sin foto</translation>
    </message>
    <message>
        <source>%1 of %2: %3. %4. %5 Arrows walk the visits, Enter compares.</source>
        <translation>%1 de %2: %3. %4. %5 Las flechas recorren las visitas, Intro compara.</translation>
    </message>
</context>
<context>
    <name>kempt::desk::TimelineView</name>
    <message>
        <source>as needed</source>
        <translation>lo necesario</translation>
    </message>
    <message>
        <source> (person %1)</source>
        <translation> (persona %1)</translation>
    </message>
    <message>
        <source>Rinse at %1.</source>
        <translation>Aclarar a las %1.</translation>
    </message>
    <message>
        <source>%1. %2%3: from %4 to %5; carries it %6 to %7 min, needs %8 min: %9%10.</source>
        <translation>%1. %2%3: de %4 a %5; lo lleva de %6 a %7 min, necesita %8 min: %9%10.</translation>
    </message>
    <message>
        <source>, beyond what is tolerated</source>
        <translation>, más de lo tolerado</translation>
    </message>
</context>
<context>
    <name>kempt::desk::ToneDetails</name>
    <message>
        <source>%1 towards %2</source>
        <translation>%1 hacia %2</translation>
    </message>
    <message>
        <source>Colours from the scalp to the ends</source>
        <translation>Colores del cuero cabelludo a las puntas</translation>
    </message>
    <message>
        <source>scalp</source>
        <translation>cuero cabelludo</translation>
    </message>
    <message>
        <source>lightness %1, %2, %3</source>
        <translation>claridad %1, %2, %3</translation>
    </message>
    <message>
        <source>red</source>
        <translation>rojo</translation>
    </message>
    <message>
        <source>green</source>
        <translation>verde</translation>
    </message>
    <message>
        <source>yellow</source>
        <translation>amarillo</translation>
    </message>
    <message>
        <source>blue</source>
        <translation>azul</translation>
    </message>
    <message>
        <source>Line of demarcation %1 from the scalp (%2 to %3): a step of %4, over %5.</source>
        <translation>Línea de demarcación a %1 del cuero cabelludo (%2 a %3): un salto de %4, en %5.</translation>
    </message>
    <message>
        <source> Hair takes about %1 to %2 weeks to grow that far.</source>
        <translation> El cabello tarda entre %1 y %2 semanas en crecer hasta ahí.</translation>
    </message>
    <message>
        <source>Root</source>
        <translation>Raíz</translation>
    </message>
    <message>
        <source>Mid-shaft</source>
        <translation>Medios</translation>
    </message>
    <message>
        <source>Ends</source>
        <translation>Puntas</translation>
    </message>
    <message>
        <source>No line of demarcation found.</source>
        <translation>No se encontró línea de demarcación.</translation>
    </message>
</context>
<context>
    <name>kempt::desk::Tool</name>
    <message>
        <source>One more corner.</source>
        <translation>Una esquina más.</translation>
    </message>
    <message>
        <source>%1 more corners.</source>
        <translation>%1 esquinas más.</translation>
    </message>
    <message>
        <source>The sides of the region cross. Drag its corners apart.</source>
        <translation>Los lados de la zona se cruzan. Separe sus esquinas.</translation>
    </message>
    <message>
        <source>Click along the edge, where the first hairs leave the scalp.</source>
        <translation>Pulse a lo largo del contorno, donde salen los primeros cabellos.</translation>
    </message>
    <message>
        <source>One point. Go on along the edge.</source>
        <translation>Un punto. Siga por el contorno.</translation>
    </message>
    <message>
        <source>Which side is the hair on? Press F once or twice until the teeth of the line point into the hair.</source>
        <translation>¿De qué lado está el cabello? Pulse F una o dos veces hasta que los dientes de la línea apunten al cabello.</translation>
    </message>
    <message>
        <source>The teeth must point into the hair. Drag a point to move it, click on the line to add one.</source>
        <translation>Los dientes deben apuntar al cabello. Arrastre un punto para moverlo, pulse en la línea para añadir uno.</translation>
    </message>
    <message>
        <source>Click four corners round smooth hair that holds the whole band of light, the two nearer to the roots first.</source>
        <translation>Pulse cuatro esquinas alrededor de cabello liso que contenga toda la banda de luz, primero las dos más cercanas a las raíces.</translation>
    </message>
    <message>
        <source>The comb stands on the side towards the roots; F turns it. The light band should lie well inside, dull hair above and below it.</source>
        <translation>El peine está del lado de las raíces; F lo gira. La banda de luz debe quedar bien dentro, con cabello apagado por encima y por debajo.</translation>
    </message>
    <message>
        <source>Click down the hair from the scalp to the ends; the first point lies on the scalp.</source>
        <translation>Pulse a lo largo del cabello, del cuero cabelludo a las puntas; el primer punto está en el cuero cabelludo.</translation>
    </message>
    <message>
        <source>The scalp end. Go on towards the ends.</source>
        <translation>El extremo del cuero cabelludo. Siga hacia las puntas.</translation>
    </message>
    <message>
        <source>The ring is the scalp end; F turns it round. Click on the line to add a point.</source>
        <translation>El anillo es el extremo del cuero cabelludo; F lo cambia. Pulse en la línea para añadir un punto.</translation>
    </message>
    <message>
        <source>This photo is measured as another kind of sheet.</source>
        <translation>Esta foto se mide como otro tipo de hoja.</translation>
    </message>
    <message>
        <source>Click four corners round the ends on the sheet: first the two in the hair, towards the roots, then the two on bare paper below the ends.</source>
        <translation>Pulse cuatro esquinas alrededor de las puntas en la hoja: primero las dos en el cabello, hacia las raíces, luego las dos en papel libre bajo las puntas.</translation>
    </message>
    <message>
        <source>The hair comes in through the side with the comb; F turns it.</source>
        <translation>El cabello entra por el lado del peine; F lo gira.</translation>
    </message>
    <message>
        <source>Measures every strand on the gauge sheet. Click four corners first to look at a part of the sheet only.</source>
        <translation>Mide todas las hebras de la hoja. Pulse antes cuatro esquinas para mirar solo una parte.</translation>
    </message>
    <message>
        <source>Measures the bends of single strands on the gauge sheet. Click four corners first to look at a part of the sheet only.</source>
        <translation>Mide las curvas de hebras sueltas en la hoja. Pulse antes cuatro esquinas para mirar solo una parte.</translation>
    </message>
    <message>
        <source>The whole sheet is looked at. Click a strand to see which it is in the list.</source>
        <translation>Se mira toda la hoja. Pulse una hebra para ver cuál es en la lista.</translation>
    </message>
    <message>
        <source>Only strands within the corners count. Drag a corner to move it.</source>
        <translation>Solo cuentan las hebras dentro de las esquinas. Arrastre una esquina para moverla.</translation>
    </message>
    <message>
        <source>Click what stays where it is: a mole, a scar, the corner of the ear. The same ones in the same order at each visit.</source>
        <translation>Pulse lo que no cambia de sitio: un lunar, una cicatriz, el borde de la oreja. Los mismos y en el mismo orden en cada visita.</translation>
    </message>
    <message>
        <source>One anchor. Two or more can carry the marks to another visit.</source>
        <translation>Un punto de anclaje. Con dos o más se pueden pasar las marcas a otra visita.</translation>
    </message>
    <message>
        <source>Keep their order the same at each visit.</source>
        <translation>Mantenga el mismo orden en cada visita.</translation>
    </message>
    <message>
        <source>Only without a gauge card: click two points that you know the distance of.</source>
        <translation>Solo sin tarjeta de medida: pulse dos puntos cuya distancia conozca.</translation>
    </message>
    <message>
        <source>Type the distance between the two points.</source>
        <translation>Escriba la distancia entre los dos puntos.</translation>
    </message>
    <message>
        <source>Drag an end to move it.</source>
        <translation>Arrastre un extremo para moverlo.</translation>
    </message>
    <message>
        <source>Tap on hair where its colour is plain, when hair is not taken for hair.</source>
        <translation>Toque cabello donde su color sea claro, si no se toma por cabello.</translation>
    </message>
    <message>
        <source>Tap on bare scalp, when scalp is taken for hair.</source>
        <translation>Toque cuero cabelludo descubierto, si se toma por cabello.</translation>
    </message>
    <message>
        <source>Measure the ends here</source>
        <translation>Medir aquí las puntas</translation>
    </message>
    <message>
        <source>Measure the comb-out here</source>
        <translation>Medir aquí lo peinado</translation>
    </message>
    <message>
        <source>Measure the pattern here</source>
        <translation>Medir aquí el rizo</translation>
    </message>
    <message>
        <source>Measure the whole sheet</source>
        <translation>Medir toda la hoja</translation>
    </message>
    <message>
        <source>Remove the edge line</source>
        <translation>Quitar la línea del contorno</translation>
    </message>
    <message>
        <source>Remove the hair samples</source>
        <translation>Quitar las muestras de cabello</translation>
    </message>
    <message>
        <source>Remove the scalp samples</source>
        <translation>Quitar las muestras de cuero cabelludo</translation>
    </message>
    <message>
        <source>Remove the region</source>
        <translation>Quitar la zona</translation>
    </message>
    <message>
        <source>Remove the line</source>
        <translation>Quitar la línea</translation>
    </message>
    <message>
        <source>Do not measure this</source>
        <translation>No medir esto</translation>
    </message>
    <message>
        <source>Remove the anchors</source>
        <translation>Quitar los puntos de anclaje</translation>
    </message>
    <message>
        <source>Remove the ruler</source>
        <translation>Quitar la regla</translation>
    </message>
    <message>
        <source>Edge</source>
        <translation>Contorno</translation>
    </message>
    <message>
        <source>Hair</source>
        <translation>Cabello</translation>
    </message>
    <message>
        <source>Scalp</source>
        <translation>Cuero cabelludo</translation>
    </message>
    <message>
        <source>Shine</source>
        <translation>Brillo</translation>
    </message>
    <message>
        <source>Tone</source>
        <translation>Tono</translation>
    </message>
    <message>
        <source>Ends</source>
        <translation>Puntas</translation>
    </message>
    <message>
        <source>Comb-out</source>
        <translation>Peinado</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Rizo</translation>
    </message>
    <message>
        <source>Anchors</source>
        <translation>Anclajes</translation>
    </message>
    <message>
        <source>Ruler</source>
        <translation>Regla</translation>
    </message>
    <message>
        <source>Draw the edge line</source>
        <translation>Dibujar la línea del contorno</translation>
    </message>
    <message>
        <source>Tap on hair, where its colour is plain</source>
        <translation>Tocar cabello, donde su color sea claro</translation>
    </message>
    <message>
        <source>Tap on bare scalp</source>
        <translation>Tocar cuero cabelludo descubierto</translation>
    </message>
    <message>
        <source>Draw the region whose shine is measured</source>
        <translation>Dibujar la zona cuyo brillo se mide</translation>
    </message>
    <message>
        <source>Draw a line down the hair, from scalp to ends, for its tone</source>
        <translation>Dibujar una línea por el cabello, del cuero cabelludo a las puntas, para su tono</translation>
    </message>
    <message>
        <source>Draw the region of the ends on the gauge sheet</source>
        <translation>Dibujar la zona de las puntas en la hoja de medida</translation>
    </message>
    <message>
        <source>Measure the strands combed out onto the gauge sheet</source>
        <translation>Medir las hebras peinadas sobre la hoja de medida</translation>
    </message>
    <message>
        <source>Measure the bends of single strands on the gauge sheet</source>
        <translation>Medir las curvas de hebras sueltas en la hoja de medida</translation>
    </message>
    <message>
        <source>Mark places that stay the same between visits</source>
        <translation>Marcar lugares que no cambian entre visitas</translation>
    </message>
    <message>
        <source>Two points a known distance apart, where there is no gauge card</source>
        <translation>Dos puntos a una distancia conocida, donde no hay tarjeta de medida</translation>
    </message>
    <message>
        <source>Hair side</source>
        <translation>Lado del cabello</translation>
    </message>
    <message>
        <source>Root side</source>
        <translation>Lado de la raíz</translation>
    </message>
    <message>
        <source>Root end</source>
        <translation>Extremo de la raíz</translation>
    </message>
</context>
<context>
    <name>kempt::desk::ToolRow</name>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>More to measure on this photo</source>
        <translation>Más para medir en esta foto</translation>
    </message>
    <message>
        <source>The scalp is at the other end of the line (F)</source>
        <translation>El cuero cabelludo está en el otro extremo de la línea (F)</translation>
    </message>
    <message>
        <source>The next side lies towards the roots (F)</source>
        <translation>El lado siguiente mira a las raíces (F)</translation>
    </message>
    <message>
        <source>The hair is on the other side of the line (F)</source>
        <translation>El cabello está al otro lado de la línea (F)</translation>
    </message>
</context>
<context>
    <name>kempt::desk::TrailBar</name>
    <message>
        <source>Back to where you were (Alt+Left)</source>
        <translation>Volver adonde estaba (Alt+Izquierda)</translation>
    </message>
    <message>
        <source>Another book (this one is %1)</source>
        <translation>Otro libro (este es %1)</translation>
    </message>
    <message>
        <source>Settings (Ctrl+,)</source>
        <translation>Ajustes (Ctrl+,)</translation>
    </message>
    <message>
        <source>Clients</source>
        <translation>Clientas</translation>
    </message>
    <message>
        <source>Go to %1</source>
        <translation>Ir a %1</translation>
    </message>
    <message>
        <source>New photos</source>
        <translation>Fotos nuevas</translation>
    </message>
    <message>
        <source>New photos: %1</source>
        <translation>Fotos nuevas: %1</translation>
    </message>
</context>
<context>
    <name>kempt::desk::ViewTray</name>
    <message>
        <source>Photos of the view %1</source>
        <translation>Fotos de la vista %1</translation>
    </message>
    <message>
        <source>Add photos of the %1</source>
        <translation>Añadir fotos: %1</translation>
    </message>
    <message>
        <source>Add a folder of photos of the %1</source>
        <translation>Añadir una carpeta de fotos: %1</translation>
    </message>
    <message>
        <source>Drop photos or a folder here.</source>
        <translation>Suelte aquí fotos o una carpeta.</translation>
    </message>
    <message>
        <source>Shot %1</source>
        <translation>Toma %1</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>Erase this photo…</source>
        <translation>Borrar esta foto…</translation>
    </message>
    <message>
        <source>Shots %1</source>
        <translation>Tomas %1</translation>
    </message>
</context>
<context>
    <name>kempt::desk::VisitPage</name>
    <message>
        <source>Erase this visit…</source>
        <translation>Borrar esta visita…</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Plan: what can this hair take today</source>
        <translation>Plan: qué admite hoy este cabello</translation>
    </message>
    <message>
        <source>Grades</source>
        <translation>Grados</translation>
    </message>
    <message>
        <source>Grades of this visit by zone</source>
        <translation>Grados de esta visita por zona</translation>
    </message>
    <message>
        <source>Hair and days</source>
        <translation>Cabello y día a día</translation>
    </message>
    <message>
        <source>Hair and days: what she told of her hair and her daily life</source>
        <translation>Cabello y día a día: lo que contó de su cabello y de su vida diaria</translation>
    </message>
    <message>
        <source>How the hair was</source>
        <translation>Cómo estaba el cabello</translation>
    </message>
    <message>
        <source>Day of the visit</source>
        <translation>Día de la visita</translation>
    </message>
    <message>
        <source>wet</source>
        <translation>mojado</translation>
    </message>
    <message>
        <source>styled</source>
        <translation>peinado</translation>
    </message>
    <message>
        <source>with product</source>
        <translation>con producto</translation>
    </message>
    <message>
        <source>Hair was %1</source>
        <translation>El cabello estaba %1</translation>
    </message>
    <message>
        <source>Visits compare only when the hair was in the same state.</source>
        <translation>Las visitas solo se comparan si el cabello estaba en el mismo estado.</translation>
    </message>
    <message>
        <source>Note on this visit</source>
        <translation>Nota de esta visita</translation>
    </message>
    <message>
        <source>What she said, what you saw</source>
        <translation>Qué dijo ella, qué vio usted</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Lay the card beside the hair, flat in its plane. Two or three shots of each view, each with card and phone set up anew.</source>
        <translation>Ponga la tarjeta junto al cabello, plana y en su plano. Dos o tres tomas de cada vista, cada una colocando de nuevo tarjeta y teléfono.</translation>
    </message>
    <message>
        <source>Reading the visit</source>
        <translation>Leyendo la visita</translation>
    </message>
    <message>
        <source>Visit of %1</source>
        <translation>Visita del %1</translation>
    </message>
    <message>
        <source>Keeping the visit</source>
        <translation>Guardando la visita</translation>
    </message>
    <message>
        <source>Photos of the %1</source>
        <translation>Fotos: %1</translation>
    </message>
    <message>
        <source>Photos (*.jpg *.jpeg *.png *.webp *.tif *.tiff *.heic *.heif);;All files (*)</source>
        <translation>Fotos (*.jpg *.jpeg *.png *.webp *.tif *.tiff *.heic *.heif);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Taking photos in</source>
        <translation>Incorporando fotos</translation>
    </message>
    <message>
        <source>%1 taken into the %2.</source>
        <translation>%1 en: %2.</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>foto</translation>
    </message>
    <message>
        <source>photos</source>
        <translation>fotos</translation>
    </message>
    <message>
        <source>%1 in the book already, left as it was.</source>
        <translation>%1 ya en el libro, sin cambios.</translation>
    </message>
    <message>
        <source>Looking at a photo</source>
        <translation>Mirando una foto</translation>
    </message>
    <message>
        <source>Erase this photo with its marks and readings?</source>
        <translation>¿Borrar esta foto con sus marcas y medidas?</translation>
    </message>
    <message>
        <source>This cannot be taken back.</source>
        <translation>No se puede deshacer.</translation>
    </message>
    <message>
        <source>Erasing a photo</source>
        <translation>Borrando una foto</translation>
    </message>
    <message>
        <source>Erase this visit with its photos, marks and readings?</source>
        <translation>¿Borrar esta visita con sus fotos, marcas y medidas?</translation>
    </message>
    <message>
        <source>Erasing a visit</source>
        <translation>Borrando una visita</translation>
    </message>
    <message>
        <source>Photos of this visit</source>
        <translation>Fotos de esta visita</translation>
    </message>
    <message>
        <source>Add photos, sorted by view…</source>
        <translation>Añadir fotos, ordenadas por vista…</translation>
    </message>
    <message>
        <source>Camera</source>
        <translation>Cámara</translation>
    </message>
    <message>
        <source>Take photos with the camera of this computer</source>
        <translation>Tomar fotos con la cámara de este ordenador</translation>
    </message>
</context>
<context>
    <name>kempt::desk::WasItDone</name>
    <message>
        <source>Was it done?</source>
        <translation>¿Se hizo?</translation>
    </message>
    <message>
        <source>Until somebody says so, the rules take it as perhaps done. D answers too.</source>
        <translation>Hasta que alguien lo diga, las reglas lo toman como quizá hecho. La tecla D también contesta.</translation>
    </message>
    <message>
        <source>%1, planned for %2</source>
        <translation>%1, planeado para el %2</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <source>It was done: %1</source>
        <translation>Se hizo: %1</translation>
    </message>
    <message>
        <source>Open it</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>Open it, to move its day or erase it: %1</source>
        <translation>Abrirlo, para mover su día o borrarlo: %1</translation>
    </message>
    <message>
        <source>Every service is in the record</source>
        <translation>Todos los servicios constan</translation>
    </message>
    <message>
        <source>Is the record complete?</source>
        <translation>¿Está completo el historial?</translation>
    </message>
    <message>
        <source>Until somebody says so, this hair may have been through anything. D answers too.</source>
        <translation>Hasta que alguien lo diga, este cabello puede haber pasado por cualquier cosa. La tecla D también contesta.</translation>
    </message>
</context>
<context>
    <name>kempt::desk::WorkPanel</name>
    <message>
        <source>Order of work: %1</source>
        <translation>Orden de trabajo: %1</translation>
    </message>
    <message>
        <source> of %1</source>
        <translation> de %1</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>Strand test, mid-shaft</source>
        <translation>Prueba de mechón, medios</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>sin anotar</translation>
    </message>
    <message>
        <source>Strand test, roots</source>
        <translation>Prueba de mechón, raíces</translation>
    </message>
    <message>
        <source>half of it</source>
        <translation>la mitad</translation>
    </message>
    <message>
        <source>Not tested: half of the mid-shaft&apos;s, since the scalp&apos;s heat about doubles the speed (common practice, no source).</source>
        <translation>Sin prueba: la mitad que en medios, porque el calor del cuero cabelludo casi dobla la velocidad (práctica común, sin fuente).</translation>
    </message>
    <message>
        <source>Strand test, ends</source>
        <translation>Prueba de mechón, puntas</translation>
    </message>
    <message>
        <source>by porosity</source>
        <translation>según porosidad</translation>
    </message>
    <message>
        <source>Not tested: the mid-shaft&apos;s, shorter where the ends are graded porous (own assumption).</source>
        <translation>Sin prueba: como en medios, más corto si las puntas se valoraron porosas (supuesto propio).</translation>
    </message>
    <message>
        <source>Strand test: mid-shaft (up to %1)</source>
        <translation>Prueba de mechón: medios (hasta %1)</translation>
    </message>
    <message>
        <source>roots, if tested</source>
        <translation>raíces, si se probó</translation>
    </message>
    <message>
        <source>ends, if tested</source>
        <translation>puntas, si se probó</translation>
    </message>
    <message>
        <source>People who apply it</source>
        <translation>Personas que aplican</translation>
    </message>
    <message>
        <source>1</source>
        <translation>1</translation>
    </message>
    <message>
        <source>2</source>
        <translation>2</translation>
    </message>
    <message>
        <source>3</source>
        <translation>3</translation>
    </message>
    <message>
        <source>Minutes to apply it, by head section (0 to %1; nothing: not done there)</source>
        <translation>Minutos de aplicación por sección (0 a %1; vacío: ahí no se aplica)</translation>
    </message>
    <message>
        <source>All sections as the first</source>
        <translation>Todas como la primera</translation>
    </message>
    <message>
        <source>Minutes of every section as those of the first</source>
        <translation>Minutos de todas las secciones como los de la primera</translation>
    </message>
    <message>
        <source>roots</source>
        <translation>raíces</translation>
    </message>
    <message>
        <source>mid-shaft</source>
        <translation>medios</translation>
    </message>
    <message>
        <source>ends</source>
        <translation>puntas</translation>
    </message>
    <message>
        <source>Minutes to apply %1 to the %2 of the %3</source>
        <translation>Minutos para aplicar %1: %2, %3</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source> The record does not say what all of this hair has been through: find the line of demarcation by eye first.</source>
        <translation> El historial no dice por lo que ha pasado todo este cabello: busque antes a ojo la línea de demarcación.</translation>
    </message>
    <message>
        <source>In this order every part keeps within what is tolerated, with one rinse %1 after the first stroke.</source>
        <translation>En este orden cada parte queda dentro de lo tolerado, con un solo aclarado %1 después de la primera pasada.</translation>
    </message>
    <message>
        <source>Round %1</source>
        <translation>Tanda %1</translation>
    </message>
    <message>
        <source>Order of work: %1, round %2</source>
        <translation>Orden de trabajo: %1, tanda %2</translation>
    </message>
    <message>
        <source>All in one go instead</source>
        <translation>Mejor todo de una vez</translation>
    </message>
    <message>
        <source>No order of work keeps every part within what is tolerated.</source>
        <translation>Ningún orden de trabajo mantiene todas las partes dentro de lo tolerado.</translation>
    </message>
    <message>
        <source>No order works. %1</source>
        <translation>Ningún orden sirve. %1</translation>
    </message>
    <message>
        <source>Neither more people, nor rounds, nor a milder strength would make one work. Plan less hair, or do it on another day.</source>
        <translation>Ni más personas, ni tandas, ni una fuerza más suave lo harían posible. Planee menos cabello, u otro día.</translation>
    </message>
    <message>
        <source>What would make one work</source>
        <translation>Qué lo haría posible</translation>
    </message>
    <message>
        <source>The least bad order, to see where it fails:</source>
        <translation>El orden menos malo, para ver dónde falla:</translation>
    </message>
    <message>
        <source>Order that does not work: %1</source>
        <translation>Orden que no sirve: %1</translation>
    </message>
    <message>
        <source>A strip is the hair of one part: it begins with the first stroke, is all covered at the end of the slant, and runs to the rinse. The line that slants alike is where its hair is ready; barred beyond it is over-processed, dotted past the rinse is under-processed.</source>
        <translation>Una franja es el cabello de una parte: empieza con la primera pasada, queda cubierta al final del sesgo y llega hasta el aclarado. La línea con el mismo sesgo marca dónde su cabello está listo; rayado más allá es exceso de proceso, punteado pasado el aclarado es falta de proceso.</translation>
    </message>
    <message>
        <source>Do it so</source>
        <translation>Hacerlo así</translation>
    </message>
    <message>
        <source>Do it so: %1</source>
        <translation>Hacerlo así: %1</translation>
    </message>
    <message>
        <source>With the milder strength an order works if its strand test takes %1 to %2 min.</source>
        <translation>Con la fuerza más suave hay un orden posible si su prueba de mechón tarda de %1 a %2 min.</translation>
    </message>
</context>
<context>
    <name>said</name>
    <message>
        <source>Chemical services are for trained professionals only.</source>
        <translation>Los servicios químicos son solo para profesionales con formación.</translation>
    </message>
    <message>
        <source>Follow the maker&apos;s directions; where they ask for more than Kempt does, they come first.</source>
        <translation>Siga las instrucciones del fabricante; donde piden más que Kempt, van primero.</translation>
    </message>
    <message>
        <source>Do a strand test on the weakest hair, and a patch test before every use of a dye.</source>
        <translation>Haga una prueba de mechón en el cabello más débil, y una prueba de alergia antes de cada uso de un tinte.</translation>
    </message>
    <message>
        <source>Rinse off at once when anything burns, stings or itches.</source>
        <translation>Aclare de inmediato si algo arde, escuece o pica.</translation>
    </message>
    <message>
        <source>Local licensing rules and the law come before anything said here.</source>
        <translation>Las normas locales de licencia y la ley van antes que todo lo dicho aquí.</translation>
    </message>
    <message>
        <source>Kempt makes no diagnosis: send scalp disease, sudden or patchy loss, pain or scarring to a doctor.</source>
        <translation>Kempt no diagnostica: envíe al médico las enfermedades del cuero cabelludo, la caída repentina o a placas, el dolor o las cicatrices.</translation>
    </message>
    <message>
        <source>When no rule speaks against a service, that clears nothing: what nobody wrote down cannot be judged.</source>
        <translation>Que ninguna regla hable en contra de un servicio no autoriza nada: lo que nadie anotó no se puede juzgar.</translation>
    </message>
    <message>
        <source>There are open, crusted or burnt places on the scalp.</source>
        <translation>Hay zonas abiertas, con costra o quemadas en el cuero cabelludo.</translation>
    </message>
    <message>
        <source>Do nothing chemical until the skin has healed; suggest seeing a doctor when it does not heal.</source>
        <translation>Nada químico hasta que la piel haya sanado; sugiera ir al médico si no sana.</translation>
    </message>
    <message>
        <source>The scalp is irritated, inflamed or sore.</source>
        <translation>El cuero cabelludo está irritado, inflamado o dolorido.</translation>
    </message>
    <message>
        <source>Wait until it is calm, and suggest seeing a doctor when it stays so.</source>
        <translation>Espere a que se calme, y sugiera ir al médico si sigue así.</translation>
    </message>
    <message>
        <source>The scalp itches, flakes or has a red place.</source>
        <translation>El cuero cabelludo pica, se descama o tiene un punto rojo.</translation>
    </message>
    <message>
        <source>Look closely; leave that place out or wait until it is calm.</source>
        <translation>Mire de cerca; deje fuera ese sitio o espere a que se calme.</translation>
    </message>
    <message>
        <source>The scalp hurts, burns or stings before anything was put on it.</source>
        <translation>El cuero cabelludo duele, arde o escuece antes de poner nada.</translation>
    </message>
    <message>
        <source>Do nothing chemical today; suggest seeing a doctor when it goes on.</source>
        <translation>Nada químico hoy; sugiera ir al médico si continúa.</translation>
    </message>
    <message>
        <source>Pins and needles where hair thins speak of a scalp in trouble.</source>
        <translation>El hormigueo donde el cabello se afina indica un cuero cabelludo con problemas.</translation>
    </message>
    <message>
        <source>Do nothing chemical; suggest seeing a doctor first.</source>
        <translation>Nada químico; sugiera ir antes al médico.</translation>
    </message>
    <message>
        <source>Scratching or hard brushing opens the skin, and a straightener burns where it is open.</source>
        <translation>Rascar o cepillar fuerte abre la piel, y un alisador quema donde está abierta.</translation>
    </message>
    <message>
        <source>Wait until at least 48 hours have passed without scratching or brushing.</source>
        <translation>Espere al menos 48 horas sin rascar ni cepillar.</translation>
    </message>
    <message>
        <source>A scratched scalp lets more of a dye into the skin.</source>
        <translation>Un cuero cabelludo arañado deja pasar más tinte a la piel.</translation>
    </message>
    <message>
        <source>Look for broken skin and wait 48 hours when in doubt.</source>
        <translation>Busque piel rota y, en la duda, espere 48 horas.</translation>
    </message>
    <message>
        <source>Freshly washed, the scalp has lost the grease that shields it.</source>
        <translation>Recién lavado, el cuero cabelludo ha perdido la grasa que lo protege.</translation>
    </message>
    <message>
        <source>Wait 24 to 48 hours after washing, or shield the scalp as the maker says.</source>
        <translation>Espere de 24 a 48 horas tras el lavado, o proteja el cuero cabelludo como dice el fabricante.</translation>
    </message>
    <message>
        <source>A straightener has burnt this scalp before.</source>
        <translation>Un alisador ya quemó antes este cuero cabelludo.</translation>
    </message>
    <message>
        <source>Take the mildest strength and a shorter time, shield the scalp, and rinse at the first sting.</source>
        <translation>Use la fuerza más suave y menos tiempo, proteja el cuero cabelludo y aclare al primer escozor.</translation>
    </message>
    <message>
        <source>Any straightener burns when it is misused, those without lye too.</source>
        <translation>Todo alisador quema si se usa mal, también los que no llevan sosa.</translation>
    </message>
    <message>
        <source>Shield scalp, hairline and ears with petroleum jelly or the maker&apos;s base.</source>
        <translation>Proteja cuero cabelludo, línea del cabello y orejas con vaselina o la base del fabricante.</translation>
    </message>
    <message>
        <source>In 121 straighteners on sale the median pH was 12.36; from pH 11.5 a product counts as corrosive to skin.</source>
        <translation>En 121 alisadores a la venta el pH mediano era 12,36; desde pH 11,5 un producto se considera corrosivo para la piel.</translation>
    </message>
    <message>
        <source>Keep it off the skin, wear gloves, and have water and the neutralising shampoo at hand.</source>
        <translation>No deje que toque la piel, use guantes y tenga a mano agua y el champú neutralizante.</translation>
    </message>
    <message>
        <source>This dye has not been patch-tested on the client.</source>
        <translation>Este tinte no se ha probado en la piel de la clienta.</translation>
    </message>
    <message>
        <source>Dab it inside the elbow or behind the ear and leave it for 48 hours.</source>
        <translation>Ponga un poco en la cara interna del codo o detrás de la oreja y déjelo 48 horas.</translation>
    </message>
    <message>
        <source>The patch test is younger than 48 hours: a late reaction would not show yet.</source>
        <translation>La prueba de alergia tiene menos de 48 horas: una reacción tardía aún no se vería.</translation>
    </message>
    <message>
        <source>Wait until 48 hours have passed.</source>
        <translation>Espere a que pasen 48 horas.</translation>
    </message>
    <message>
        <source>The patch test is more than a week old; it belongs to one use of the dye.</source>
        <translation>La prueba de alergia tiene más de una semana; vale para un solo uso del tinte.</translation>
    </message>
    <message>
        <source>Do a new patch test for this service.</source>
        <translation>Haga una prueba de alergia nueva para este servicio.</translation>
    </message>
    <message>
        <source>The patch test reacted.</source>
        <translation>La prueba de alergia dio reacción.</translation>
    </message>
    <message>
        <source>Do not use this product on the client; suggest seeing a doctor.</source>
        <translation>No use este producto en la clienta; sugiera ir al médico.</translation>
    </message>
    <message>
        <source>A dye has caused a rash, itch or swelling before; the next reaction may be severe.</source>
        <translation>Un tinte ya causó sarpullido, picor o hinchazón; la próxima reacción puede ser grave.</translation>
    </message>
    <message>
        <source>Do not dye; suggest seeing a doctor about the allergy.</source>
        <translation>No tiña; sugiera ir al médico por la alergia.</translation>
    </message>
    <message>
        <source>After a reaction to black henna, hair dyes can cause severe allergic reactions.</source>
        <translation>Tras una reacción a la henna negra, los tintes pueden causar reacciones alérgicas graves.</translation>
    </message>
    <message>
        <source>There is a rash on the face or neck.</source>
        <translation>Hay un sarpullido en la cara o el cuello.</translation>
    </message>
    <message>
        <source>Do not dye until it has gone.</source>
        <translation>No tiña hasta que haya desaparecido.</translation>
    </message>
    <message>
        <source>Dyes labelled as strong sensitisers are not meant for people under 16.</source>
        <translation>Los tintes etiquetados como muy sensibilizantes no son para menores de 16 años.</translation>
    </message>
    <message>
        <source>Do not dye with them before the client is 16.</source>
        <translation>No tiña con ellos antes de que la clienta cumpla 16.</translation>
    </message>
    <message>
        <source>Thioglycolate on hair that has been through a hydroxide straightener breaks it.</source>
        <translation>El tioglicolato sobre cabello que pasó por un alisador de hidróxido lo rompe.</translation>
    </message>
    <message>
        <source>Wait until that hair has been cut off.</source>
        <translation>Espere a que ese cabello se haya cortado.</translation>
    </message>
    <message>
        <source>A hydroxide straightener on hair that has been through thioglycolate breaks it.</source>
        <translation>Un alisador de hidróxido sobre cabello que pasó por tioglicolato lo rompe.</translation>
    </message>
    <message>
        <source>Hydroxide and thioglycolate never meet on one head of hair.</source>
        <translation>El hidróxido y el tioglicolato nunca se encuentran en una misma cabeza.</translation>
    </message>
    <message>
        <source>Take one of them off the plan.</source>
        <translation>Quite uno de los dos del plan.</translation>
    </message>
    <message>
        <source>Metal salts of a progressive dye react with peroxide and straighteners: heat, breakage, odd colours.</source>
        <translation>Las sales metálicas de un tinte progresivo reaccionan con el peróxido y los alisadores: calor, rotura, colores raros.</translation>
    </message>
    <message>
        <source>Henna coats the hair and often holds metal salts; what happens under chemistry cannot be foretold.</source>
        <translation>La henna recubre el cabello y a menudo lleva sales metálicas; no se puede prever qué pasa con la química.</translation>
    </message>
    <message>
        <source>Colour takes unevenly on henna, and metal salts in it may react with peroxide.</source>
        <translation>El color agarra desigual sobre henna, y las sales metálicas que lleve pueden reaccionar con el peróxido.</translation>
    </message>
    <message>
        <source>Find out which henna it was, and test a cut strand in the developer first.</source>
        <translation>Averigüe qué henna fue y pruebe antes en el revelador un mechón cortado.</translation>
    </message>
    <message>
        <source>Lightening on hydroxide-straightened hair that is already weak breaks it.</source>
        <translation>Decolorar cabello alisado con hidróxido que ya está débil lo rompe.</translation>
    </message>
    <message>
        <source>Do not lighten this hair; build it up, or let it grow out.</source>
        <translation>No decolore este cabello; refuércelo o déjelo crecer.</translation>
    </message>
    <message>
        <source>Advise against it; only on sound hair, after a strand test, on a few strands at a time.</source>
        <translation>Desaconséjelo; solo en cabello sano, tras una prueba de mechón y pocas hebras cada vez.</translation>
    </message>
    <message>
        <source>Lightened hair does not bear a hydroxide straightener.</source>
        <translation>El cabello decolorado no soporta un alisador de hidróxido.</translation>
    </message>
    <message>
        <source>Let the lightened hair grow out and be cut off first.</source>
        <translation>Deje antes crecer y cortar el cabello decolorado.</translation>
    </message>
    <message>
        <source>Lightened hair processes fast and breaks easily under thioglycolate.</source>
        <translation>El cabello decolorado se procesa rápido y se rompe con facilidad con tioglicolato.</translation>
    </message>
    <message>
        <source>Advise against it; only a product made for lightened hair, after a strand test.</source>
        <translation>Desaconséjelo; solo un producto hecho para cabello decolorado, tras una prueba de mechón.</translation>
    </message>
    <message>
        <source>Smoothing sets with high heat, and straightened hair has less to give.</source>
        <translation>El alisado con plancha fija con mucho calor, y al cabello alisado le queda menos que dar.</translation>
    </message>
    <message>
        <source>Ask whether it is needed; a strand test first, and the iron as cool as the directions allow.</source>
        <translation>Pregunte si hace falta; antes una prueba de mechón, y la plancha tan fría como permitan las instrucciones.</translation>
    </message>
    <message>
        <source>Hair that is already straightened is never straightened again: straightener goes on new growth only.</source>
        <translation>El cabello ya alisado nunca se alisa de nuevo: el alisador va solo en el crecimiento.</translation>
    </message>
    <message>
        <source>Plan a retouch of the new growth, and cover the lengths with cream.</source>
        <translation>Planee un retoque del crecimiento y cubra los largos con crema.</translation>
    </message>
    <message>
        <source>A second round of thioglycolate on the same hair weakens it further.</source>
        <translation>Una segunda pasada de tioglicolato en el mismo cabello lo debilita más.</translation>
    </message>
    <message>
        <source>Keep to the new growth.</source>
        <translation>Quédese en el crecimiento.</translation>
    </message>
    <message>
        <source>Lightener on lightened hair breaks it.</source>
        <translation>Decolorar lo ya decolorado lo rompe.</translation>
    </message>
    <message>
        <source>Keep to the new growth and leave the lightened hair dry or under cream.</source>
        <translation>Quédese en el crecimiento y deje el cabello decolorado seco o bajo crema.</translation>
    </message>
    <message>
        <source>Permanent colour drawn through the lengths every time builds up and wears them.</source>
        <translation>El color permanente llevado cada vez por los largos se acumula y los desgasta.</translation>
    </message>
    <message>
        <source>Permanent colour on the new growth; refresh the lengths without lift.</source>
        <translation>Color permanente en el crecimiento; refresque los largos sin aclarar.</translation>
    </message>
    <message>
        <source>The last straightening is less than eight weeks ago; dermatologists advise retouches every two to three months.</source>
        <translation>El último alisado fue hace menos de ocho semanas; los dermatólogos aconsejan retoques cada dos o tres meses.</translation>
    </message>
    <message>
        <source>Wait until two months have passed.</source>
        <translation>Espere a que pasen dos meses.</translation>
    </message>
    <message>
        <source>With less than 6 mm of new growth a retouch cannot be kept off the straightened hair.</source>
        <translation>Con menos de 6 mm de crecimiento no se puede evitar que un retoque toque el cabello alisado.</translation>
    </message>
    <message>
        <source>Wait until there is more new growth; 12 mm and more is usual.</source>
        <translation>Espere a que haya más crecimiento; lo habitual son 12 mm o más.</translation>
    </message>
    <message>
        <source>There is less new growth than the 12 to 25 mm at which a retouch is usual.</source>
        <translation>Hay menos crecimiento que los 12 a 25 mm habituales para un retoque.</translation>
    </message>
    <message>
        <source>Wait, or keep a clear distance from the line of demarcation.</source>
        <translation>Espere, o guarde una distancia clara con la línea de demarcación.</translation>
    </message>
    <message>
        <source>A retouch is planned, but the record shows no earlier straightening or perm on this hair.</source>
        <translation>Se planea un retoque, pero en el historial no consta ningún alisado ni permanente en este cabello.</translation>
    </message>
    <message>
        <source>Enter the earlier service, or plan a first one.</source>
        <translation>Anote el servicio anterior o planee un primero.</translation>
    </message>
    <message>
        <source>At least two weeks belong between a straightener and permanent colour or lightening.</source>
        <translation>Entre un alisador y un color permanente o una decoloración van al menos dos semanas.</translation>
    </message>
    <message>
        <source>Wait; until then colour without lift if at all.</source>
        <translation>Espere; hasta entonces, si acaso, color sin aclarar.</translation>
    </message>
    <message>
        <source>At least two weeks belong between permanent colour or lightening and a straightener.</source>
        <translation>Entre un color permanente o una decoloración y un alisador van al menos dos semanas.</translation>
    </message>
    <message>
        <source>Wait; next time straighten first and colour later.</source>
        <translation>Espere; la próxima vez alise primero y dé color después.</translation>
    </message>
    <message>
        <source>A straightener and permanent colour or lightening on one day add up their damage.</source>
        <translation>Un alisador y un color permanente o una decoloración el mismo día suman sus daños.</translation>
    </message>
    <message>
        <source>Straighten first; colour two weeks later or more.</source>
        <translation>Alise primero; color dos semanas después o más.</translation>
    </message>
    <message>
        <source>At least seven days belong between a perm and a dye.</source>
        <translation>Entre una permanente y un tinte van al menos siete días.</translation>
    </message>
    <message>
        <source>Wait a week between the two.</source>
        <translation>Espere una semana entre ambos.</translation>
    </message>
    <message>
        <source>One authority advises three months between two dyes.</source>
        <translation>Una autoridad aconseja tres meses entre dos tintes.</translation>
    </message>
    <message>
        <source>Ask whether a colour without lift would do this time.</source>
        <translation>Pregunte si esta vez bastaría un color sin aclarar.</translation>
    </message>
    <message>
        <source>Wet, this hair breaks or stretches like gum: it does not bear a chemical service.</source>
        <translation>Mojado, este cabello se rompe o se estira como goma: no soporta un servicio químico.</translation>
    </message>
    <message>
        <source>Protein and moisture treatments, a trim, and the wet stretch test again in some weeks.</source>
        <translation>Tratamientos de proteína e hidratación, un corte de puntas y otra prueba de estiramiento en mojado dentro de unas semanas.</translation>
    </message>
    <message>
        <source>Wet, this hair springs back only in part.</source>
        <translation>Mojado, este cabello recupera su forma solo en parte.</translation>
    </message>
    <message>
        <source>Treat it first; if at all, the mildest strength after a strand test.</source>
        <translation>Trátelo antes; si acaso, la fuerza más suave tras una prueba de mechón.</translation>
    </message>
    <message>
        <source>The hair is breaking.</source>
        <translation>El cabello se está rompiendo.</translation>
    </message>
    <message>
        <source>No chemical service until the breakage has stopped.</source>
        <translation>Ningún servicio químico hasta que pare la rotura.</translation>
    </message>
    <message>
        <source>There are broken pieces in one zone.</source>
        <translation>Hay trozos rotos en una zona.</translation>
    </message>
    <message>
        <source>Find the cause first and leave that zone out.</source>
        <translation>Busque antes la causa y deje fuera esa zona.</translation>
    </message>
    <message>
        <source>The measured share of short, broken strands has grown since the last visit.</source>
        <translation>La parte medida de hebras cortas y rotas ha crecido desde la última visita.</translation>
    </message>
    <message>
        <source>Find the cause before anything chemical.</source>
        <translation>Busque la causa antes de nada químico.</translation>
    </message>
    <message>
        <source>The hair drinks water at once and feels spongy: its inside is gone.</source>
        <translation>El cabello absorbe el agua al instante y está esponjoso: su interior se ha perdido.</translation>
    </message>
    <message>
        <source>Nothing chemical; treat, trim, and let it grow out.</source>
        <translation>Nada químico; trate, corte las puntas y deje crecer.</translation>
    </message>
    <message>
        <source>Porous hair takes straightener and lightener faster than the rest.</source>
        <translation>El cabello poroso toma el alisador y la decoloración más rápido que el resto.</translation>
    </message>
    <message>
        <source>Apply there last, shorten the time, take the mild strength, or shield it.</source>
        <translation>Aplique ahí al final, acorte el tiempo, use la fuerza suave o protéjalo.</translation>
    </message>
    <message>
        <source>Porous hair takes colour faster and darker, and loses it sooner.</source>
        <translation>El cabello poroso toma el color más rápido y más oscuro, y lo pierde antes.</translation>
    </message>
    <message>
        <source>Apply there last and for a shorter time, half a tone lighter, or fill first.</source>
        <translation>Aplique ahí al final y menos tiempo, medio tono más claro, o rellene antes.</translation>
    </message>
    <message>
        <source>Fine hair takes the mild strength.</source>
        <translation>El cabello fino lleva la fuerza suave.</translation>
    </message>
    <message>
        <source>Change to mild.</source>
        <translation>Cambie a suave.</translation>
    </message>
    <message>
        <source>The super strength is meant for coarse, resistant hair.</source>
        <translation>La fuerza fuerte es para cabello grueso y resistente.</translation>
    </message>
    <message>
        <source>Take regular on medium hair, mild on fine, porous or coloured hair.</source>
        <translation>Use la normal en cabello medio, la suave en fino, poroso o teñido.</translation>
    </message>
    <message>
        <source>Dermatologists advise the mild strength and a short time over the regular or super one.</source>
        <translation>Los dermatólogos aconsejan la fuerza suave y poco tiempo antes que la normal o la fuerte.</translation>
    </message>
    <message>
        <source>Ask whether mild would do.</source>
        <translation>Pregunte si bastaría la suave.</translation>
    </message>
    <message>
        <source>Coloured hair takes the mild strength.</source>
        <translation>El cabello teñido lleva la fuerza suave.</translation>
    </message>
    <message>
        <source>Change to mild, or stay off the coloured hair.</source>
        <translation>Cambie a suave, o no toque el cabello teñido.</translation>
    </message>
    <message>
        <source>Hair straightened to the last bend has nothing left to give.</source>
        <translation>Al cabello alisado hasta la última onda no le queda nada que dar.</translation>
    </message>
    <message>
        <source>Stop at about three quarters to 85 % of the way to straight.</source>
        <translation>Pare a unas tres cuartas partes u 85 % del camino a liso.</translation>
    </message>
    <message>
        <source>The strand test failed.</source>
        <translation>La prueba de mechón no se superó.</translation>
    </message>
    <message>
        <source>Do not do this service on this hair.</source>
        <translation>No haga este servicio en este cabello.</translation>
    </message>
    <message>
        <source>No strand test was made.</source>
        <translation>No se hizo prueba de mechón.</translation>
    </message>
    <message>
        <source>Test the weakest hair first, and write down the minutes it needed.</source>
        <translation>Pruebe antes en el cabello más débil y anote los minutos que necesitó.</translation>
    </message>
    <message>
        <source>The planned time is longer than the maker&apos;s directions allow.</source>
        <translation>El tiempo previsto es más largo de lo que permiten las instrucciones del fabricante.</translation>
    </message>
    <message>
        <source>Stay within the directions.</source>
        <translation>No se salga de las instrucciones.</translation>
    </message>
    <message>
        <source>The few hairs of these edges are fine and young, and would be lost first.</source>
        <translation>Los pocos cabellos de este contorno son finos y jóvenes, y serían los primeros en perderse.</translation>
    </message>
    <message>
        <source>Leave the edges out and shield them.</source>
        <translation>Deje fuera el contorno y protéjalo.</translation>
    </message>
    <message>
        <source>The measured edges have become thinner since the last visit.</source>
        <translation>El contorno medido se ha afinado desde la última visita.</translation>
    </message>
    <message>
        <source>Find the cause before straightening near them; suggest seeing a doctor when it goes on.</source>
        <translation>Busque la causa antes de alisar cerca; sugiera ir al médico si continúa.</translation>
    </message>
    <message>
        <source>Uneven colour on straightened hair is evened out tone on tone rather than by lifting and starting again.</source>
        <translation>El color desigual en cabello alisado se iguala tono sobre tono, mejor que aclarando y empezando de nuevo.</translation>
    </message>
    <message>
        <source>Choose demi-permanent colour section by section, to the darkest even tone that is wanted.</source>
        <translation>Elija color demipermanente sección por sección, hasta el tono uniforme más oscuro que se quiera.</translation>
    </message>
    <message>
        <source>Where hair is unevenly porous, the next colour comes out uneven again.</source>
        <translation>Donde la porosidad es desigual, el próximo color vuelve a quedar desigual.</translation>
    </message>
    <message>
        <source>Fill or pre-treat the porous part, then colour it last.</source>
        <translation>Rellene o pretrate la parte porosa y dele color al final.</translation>
    </message>
    <message>
        <source>Straightener and permanent colour together raise the damage; on straightened hair semi-permanent is preferred.</source>
        <translation>Alisador y color permanente juntos aumentan el daño; en cabello alisado se prefiere el semipermanente.</translation>
    </message>
    <message>
        <source>Take a colour without lift.</source>
        <translation>Use un color sin aclarar.</translation>
    </message>
    <message>
        <source>Fine hair lightens fast and breaks early.</source>
        <translation>El cabello fino se decolora rápido y se rompe pronto.</translation>
    </message>
    <message>
        <source>The weakest lightener, a few strands at a time, and a look every few minutes.</source>
        <translation>El decolorante más débil, pocas hebras cada vez y una mirada cada pocos minutos.</translation>
    </message>
    <message>
        <source>Lightened hair lacks the warm pigment under a darker colour and turns out flat or greenish.</source>
        <translation>Al cabello decolorado le falta el pigmento cálido bajo un color más oscuro y queda apagado o verdoso.</translation>
    </message>
    <message>
        <source>Put the missing warm tone back first.</source>
        <translation>Devuelva antes el tono cálido que falta.</translation>
    </message>
    <message>
        <source>Skin and hair react differently in pregnancy and while breastfeeding.</source>
        <translation>La piel y el cabello reaccionan de otro modo en el embarazo y la lactancia.</translation>
    </message>
    <message>
        <source>Ask the client to talk to doctor or midwife first; rather wait.</source>
        <translation>Pida a la clienta que hable antes con su médico o matrona; mejor esperar.</translation>
    </message>
    <message>
        <source>Some medicines thin the skin, slow its healing or weaken the hair.</source>
        <translation>Algunos medicamentos afinan la piel, retrasan su curación o debilitan el cabello.</translation>
    </message>
    <message>
        <source>Ask the client to check with doctor or pharmacist before the service.</source>
        <translation>Pida a la clienta que consulte al médico o farmacéutico antes del servicio.</translation>
    </message>
    <message>
        <source>Straighteners sold for children have the same pH as those for adults, and children need extra care.</source>
        <translation>Los alisadores que se venden para niños tienen el mismo pH que los de adultos, y los niños necesitan más cuidado.</translation>
    </message>
    <message>
        <source>Advise against it; if at all, with a parent present and a shorter time.</source>
        <translation>Desaconséjelo; si acaso, con un padre o madre presente y menos tiempo.</translation>
    </message>
    <message>
        <source>Of 574 African schoolgirls 17 % already had hair loss from pulling.</source>
        <translation>De 574 escolares africanas, el 17 % ya tenía caída por tracción.</translation>
    </message>
    <message>
        <source>A loose style without added hair.</source>
        <translation>Un peinado suelto, sin cabello añadido.</translation>
    </message>
    <message>
        <source>At home spots are missed, times run over and nobody sees the scalp.</source>
        <translation>En casa se saltan zonas, se pasan los tiempos y nadie ve el cuero cabelludo.</translation>
    </message>
    <message>
        <source>Do it in the salon; help from a second person at the least.</source>
        <translation>Hágalo en el salón; como mínimo, con ayuda de otra persona.</translation>
    </message>
    <message>
        <source>Products that release formaldehyde are not for home use: the gas comes out on heating.</source>
        <translation>Los productos que liberan formaldehído no son para casa: el gas sale al calentar.</translation>
    </message>
    <message>
        <source>Do not use it.</source>
        <translation>No lo use.</translation>
    </message>
    <message>
        <source>The product releases formaldehyde when heated, a gas that causes cancer in people.</source>
        <translation>El producto libera formaldehído al calentarse, un gas que causa cáncer en las personas.</translation>
    </message>
    <message>
        <source>Choose a product without it. Labels that claim to be free of it were found wrong: read the safety data sheet.</source>
        <translation>Elija un producto sin él. Se encontraron etiquetas falsas de «sin formaldehído»: lea la ficha de datos de seguridad.</translation>
    </message>
    <message>
        <source>The product&apos;s safety data sheet is not at hand.</source>
        <translation>La ficha de datos de seguridad del producto no está a mano.</translation>
    </message>
    <message>
        <source>Get it from the maker before the product is used.</source>
        <translation>Pídala al fabricante antes de usar el producto.</translation>
    </message>
    <message>
        <source>Water in the hair boils under an iron and tears it from inside.</source>
        <translation>El agua del cabello hierve bajo la plancha y lo rasga por dentro.</translation>
    </message>
    <message>
        <source>Dry the hair to its core first.</source>
        <translation>Seque antes el cabello hasta el interior.</translation>
    </message>
    <message>
        <source>An iron on damp hair boils the water in it.</source>
        <translation>Una plancha sobre cabello húmedo hierve el agua que contiene.</translation>
    </message>
    <message>
        <source>Iron only hair that is dry to its core, with a protectant.</source>
        <translation>Planche solo cabello seco hasta el interior, con protector.</translation>
    </message>
    <message>
        <source>Above 220 °C irons were seen to melt and bubble the fibre; at 220 °C curl, stiffness and strength were lost.</source>
        <translation>Por encima de 220 °C se vio que las planchas funden y burbujean la fibra; a 220 °C se perdieron rizo, rigidez y fuerza.</translation>
    </message>
    <message>
        <source>Go below 200 °C, and lower on weak hair.</source>
        <translation>Baje de 200 °C, y más en cabello débil.</translation>
    </message>
    <message>
        <source>Slow passes at 180 to 210 °C leave large voids in the fibre.</source>
        <translation>Las pasadas lentas de 180 a 210 °C dejan grandes huecos en la fibra.</translation>
    </message>
    <message>
        <source>185 °C at the most on coarse, tightly curled hair, less on any other.</source>
        <translation>185 °C como máximo en cabello grueso y muy rizado, menos en cualquier otro.</translation>
    </message>
    <message>
        <source>Ironed 50 times at 185 °C curl came back and strength held; at 220 °C both suffered.</source>
        <translation>Planchado 50 veces a 185 °C, el rizo volvió y la fuerza se mantuvo; a 220 °C ambos sufrieron.</translation>
    </message>
    <message>
        <source>Stay at 185 °C or below.</source>
        <translation>Quédese en 185 °C o menos.</translation>
    </message>
    <message>
        <source>Lightened hair falls apart faster under heat, and fine or weak hair has less to give.</source>
        <translation>El cabello decolorado se deshace antes con calor, y al fino o débil le queda menos que dar.</translation>
    </message>
    <message>
        <source>120 to 150 °C, one quick pass, or no iron.</source>
        <translation>De 120 a 150 °C, una pasada rápida, o sin plancha.</translation>
    </message>
    <message>
        <source>Straightened or coloured hair takes less heat.</source>
        <translation>El cabello alisado o teñido lleva menos calor.</translation>
    </message>
    <message>
        <source>150 to 170 °C.</source>
        <translation>De 150 a 170 °C.</translation>
    </message>
    <message>
        <source>Slow and repeated passes do more harm than one.</source>
        <translation>Las pasadas lentas y repetidas dañan más que una.</translation>
    </message>
    <message>
        <source>Small sections, one pass, at most two.</source>
        <translation>Secciones pequeñas, una pasada, dos como máximo.</translation>
    </message>
    <message>
        <source>No heat protectant is planned.</source>
        <translation>No se ha previsto protector térmico.</translation>
    </message>
    <message>
        <source>Use one, on dry hair.</source>
        <translation>Use uno, en cabello seco.</translation>
    </message>
    <message>
        <source>Heat tools are used more than once a week.</source>
        <translation>Se usa calor más de una vez por semana.</translation>
    </message>
    <message>
        <source>Once a week at most, at the lowest setting that works.</source>
        <translation>Una vez por semana como máximo, a la temperatura más baja que funcione.</translation>
    </message>
    <message>
        <source>The heat tool at home is set above 185 °C.</source>
        <translation>La herramienta de calor de casa está a más de 185 °C.</translation>
    </message>
    <message>
        <source>Turn it down to 185 °C at the most, to 150 °C on lightened, fine or weak hair.</source>
        <translation>Bájela a 185 °C como máximo, a 150 °C en cabello decolorado, fino o débil.</translation>
    </message>
    <message>
        <source>Pull on freshly straightened hair: traction on relaxed hair went with 3.5 times the odds of hair loss.</source>
        <translation>Tirar del cabello recién alisado: la tracción en cabello alisado iba con 3,5 veces más probabilidad de caída.</translation>
    </message>
    <message>
        <source>Leave it loose for two weeks, without added hair.</source>
        <translation>Déjelo suelto dos semanas, sin cabello añadido.</translation>
    </message>
    <message>
        <source>One of the two; the style two weeks later, and loose.</source>
        <translation>Uno de los dos; el peinado dos semanas después, y suelto.</translation>
    </message>
    <message>
        <source>Traction on relaxed hair went with 3.5 times the odds of hair loss, against natural hair.</source>
        <translation>La tracción en cabello alisado iba con 3,5 veces más probabilidad de caída que en el natural.</translation>
    </message>
    <message>
        <source>A loose style, worn for a short time.</source>
        <translation>Un peinado suelto, llevado poco tiempo.</translation>
    </message>
    <message>
        <source>These edges are nearly bare; pulling goes on with what thinned them.</source>
        <translation>Este contorno está casi descubierto; tirar sigue con lo que lo afinó.</translation>
    </message>
    <message>
        <source>No pull here: loose, without added hair, edges left out.</source>
        <translation>Aquí nada que tire: suelto, sin cabello añadido, el contorno fuera.</translation>
    </message>
    <message>
        <source>These edges show gaps; early hair loss from pulling can come back, late loss scars.</source>
        <translation>Este contorno tiene huecos; la caída temprana por tracción puede recuperarse, la tardía deja cicatriz.</translation>
    </message>
    <message>
        <source>Leave the edges out and the style loose.</source>
        <translation>Deje fuera el contorno y el peinado suelto.</translation>
    </message>
    <message>
        <source>A style that hurts while it is put in is too tight.</source>
        <translation>Un peinado que duele al hacerlo está demasiado tirante.</translation>
    </message>
    <message>
        <source>Take it down and do it again, looser.</source>
        <translation>Deshágalo y hágalo de nuevo, más suelto.</translation>
    </message>
    <message>
        <source>The style stays in for more than three months.</source>
        <translation>El peinado dura más de tres meses.</translation>
    </message>
    <message>
        <source>Three months at the most, washed about every two weeks.</source>
        <translation>Tres meses como máximo, lavado cada dos semanas más o menos.</translation>
    </message>
    <message>
        <source>Tight styles or added hair on straightened hair carry the highest risk of loss at the edges.</source>
        <translation>Los peinados tirantes o el cabello añadido en cabello alisado tienen el mayor riesgo de caída en el contorno.</translation>
    </message>
    <message>
        <source>Looser styles, and a rest between them.</source>
        <translation>Peinados más sueltos, y descanso entre ellos.</translation>
    </message>
    <message>
        <source>Bands and caps rub and press on the edges.</source>
        <translation>Las cintas y los gorros rozan y aprietan el contorno.</translation>
    </message>
    <message>
        <source>Looser, lined with something smooth, and away from the hairline.</source>
        <translation>Más flojos, forrados con algo suave y lejos de la línea del cabello.</translation>
    </message>
    <message>
        <source>A hair product has made the face swell or breathing hard.</source>
        <translation>Un producto para el cabello hizo que se hinchara la cara o costara respirar.</translation>
    </message>
    <message>
        <source>No product of that sort; when it happens now, call the emergency number. Suggest seeing a doctor.</source>
        <translation>Ningún producto de ese tipo; si ocurre ahora, llame a emergencias. Sugiera ir al médico.</translation>
    </message>
    <message>
        <source>Pain, pimples, crusts or scale at the hairline warn of hair loss from pulling or of scalp disease.</source>
        <translation>Dolor, granos, costras o escamas en la línea del cabello avisan de caída por tracción o de enfermedad.</translation>
    </message>
    <message>
        <source>Suggest seeing a doctor.</source>
        <translation>Sugiera ir al médico.</translation>
    </message>
    <message>
        <source>Smooth skin without openings of hairs, or thinning eyebrows, are not the look of pulling alone.</source>
        <translation>Piel lisa sin salidas de cabello, o cejas que se afinan, no son propias solo de la tracción.</translation>
    </message>
    <message>
        <source>Suggest seeing a doctor soon: some causes scar.</source>
        <translation>Sugiera ir pronto al médico: algunas causas dejan cicatriz.</translation>
    </message>
    <message>
        <source>Sudden or patchy loss of hair.</source>
        <translation>Caída de cabello repentina o a placas.</translation>
    </message>
    <message>
        <source>More than two hairs came out in one pull; two or fewer came out in 97 % of people.</source>
        <translation>En un tirón salieron más de dos cabellos; dos o menos salieron en el 97 % de las personas.</translation>
    </message>
    <message>
        <source>Do it again another day; suggest seeing a doctor when it stays so.</source>
        <translation>Repítalo otro día; sugiera ir al médico si sigue así.</translation>
    </message>
    <message>
        <source>Count again on three mornings; suggest seeing a doctor when it stays high.</source>
        <translation>Cuente de nuevo tres mañanas; sugiera ir al médico si sigue alto.</translation>
    </message>
    <message>
        <source>Hair still gets thinner three to six months after pulling styles stopped.</source>
        <translation>El cabello sigue afinándose de tres a seis meses después de dejar los peinados que tiran.</translation>
    </message>
    <message>
        <source>A child&apos;s edges are thin.</source>
        <translation>El contorno de una niña está ralo.</translation>
    </message>
    <message>
        <source>Suggest seeing a doctor, and no pulling styles.</source>
        <translation>Sugiera ir al médico, y nada de peinados que tiren.</translation>
    </message>
    <message>
        <source>The measured edges have become thinner from one visit to the next.</source>
        <translation>El contorno medido se ha afinado de una visita a la siguiente.</translation>
    </message>
    <message>
        <source>Go through styles, products and heat; suggest seeing a doctor when it goes on.</source>
        <translation>Repase peinados, productos y calor; sugiera ir al médico si continúa.</translation>
    </message>
    <message>
        <source>A style that hurts comes down today; have it redone looser.</source>
        <translation>Un peinado que duele se deshace hoy; que se lo hagan más suelto.</translation>
    </message>
    <message>
        <source>Wear styles loose and leave the hairline out of them; change the parting and the place of a tail.</source>
        <translation>Lleve peinados sueltos y deje fuera la línea del cabello; cambie la raya y el lugar de la coleta.</translation>
    </message>
    <message>
        <source>No braids, tight buns or added hair until two weeks after straightening.</source>
        <translation>Sin trenzas, moños tirantes ni cabello añadido hasta dos semanas después del alisado.</translation>
    </message>
    <message>
        <source>Take braids, locks or weaves out after two to three months at the latest, and wash them about every two weeks.</source>
        <translation>Quite trenzas, rastas o extensiones cosidas a los dos o tres meses como máximo, y lávelas cada dos semanas más o menos.</translation>
    </message>
    <message>
        <source>Line caps and bands with something smooth and wear them behind the hairline.</source>
        <translation>Forre gorros y cintas con algo suave y llévelos detrás de la línea del cabello.</translation>
    </message>
    <message>
        <source>Iron only hair that is dry to its core, with a heat protectant.</source>
        <translation>Planche solo cabello seco hasta el interior, con protector térmico.</translation>
    </message>
    <message>
        <source>Use heat tools once a week at most, at the lowest setting that works.</source>
        <translation>Use calor una vez por semana como máximo, a la temperatura más baja que funcione.</translation>
    </message>
    <message>
        <source>Turn the iron down to 185 °C or less.</source>
        <translation>Baje la plancha a 185 °C o menos.</translation>
    </message>
    <message>
        <source>On lightened, fine or weak hair set the iron to 120 to 150 °C.</source>
        <translation>En cabello decolorado, fino o débil ponga la plancha de 120 a 150 °C.</translation>
    </message>
    <message>
        <source>Do not scratch or brush the scalp in the two days before a chemical service.</source>
        <translation>No rasque ni cepille el cuero cabelludo los dos días anteriores a un servicio químico.</translation>
    </message>
    <message>
        <source>Leave retouches to the salon: new growth only, every two to three months.</source>
        <translation>Deje los retoques al salón: solo el crecimiento, cada dos o tres meses.</translation>
    </message>
    <message>
        <source>Put conditioner on mid-shaft and ends at every wash.</source>
        <translation>Ponga acondicionador en medios y puntas en cada lavado.</translation>
    </message>
    <message>
        <source>Once a week leave a moisture mask on the lengths, ends first.</source>
        <translation>Una vez por semana deje una mascarilla hidratante en los largos, primero las puntas.</translation>
    </message>
    <message>
        <source>Every third or fourth week take a protein treatment in place of the moisture mask.</source>
        <translation>Cada tres o cuatro semanas use un tratamiento de proteína en lugar de la mascarilla hidratante.</translation>
    </message>
    <message>
        <source>Detangle with conditioner in, with a wide comb, from the ends upwards.</source>
        <translation>Desenrede con acondicionador puesto, con peine ancho, desde las puntas hacia arriba.</translation>
    </message>
    <message>
        <source>Wash less often than every other day, with lukewarm water.</source>
        <translation>Lave menos que un día sí y otro no, con agua tibia.</translation>
    </message>
    <message>
        <source>Cover the hair at night with something smooth, or sleep on a smooth pillowcase.</source>
        <translation>Cubra el cabello por la noche con algo suave, o duerma sobre una funda suave.</translation>
    </message>
    <message>
        <source>Wet the hair and put conditioner in before swimming, and rinse it right afterwards.</source>
        <translation>Moje el cabello y ponga acondicionador antes de nadar, y aclárelo justo después.</translation>
    </message>
    <message>
        <source>Where water is hard, wash with a chelating shampoo about once a month.</source>
        <translation>Donde el agua es dura, lave con un champú quelante una vez al mes más o menos.</translation>
    </message>
    <message>
        <source>Let the hair dry before it is covered, and change the place where the cover is pinned.</source>
        <translation>Deje secar el cabello antes de cubrirlo, y cambie el sitio donde se sujeta.</translation>
    </message>
    <message>
        <source>a hydroxide straightener</source>
        <translation>un alisador de hidróxido</translation>
    </message>
    <message>
        <source>a hydroxide straightener that has or may have lye</source>
        <translation>un alisador de hidróxido que lleva o puede llevar sosa</translation>
    </message>
    <message>
        <source>a thioglycolate straightener or perm</source>
        <translation>un alisador o una permanente de tioglicolato</translation>
    </message>
    <message>
        <source>a chemical straightener</source>
        <translation>un alisador químico</translation>
    </message>
    <message>
        <source>a straightener or perm</source>
        <translation>un alisador o una permanente</translation>
    </message>
    <message>
        <source>a perm</source>
        <translation>una permanente</translation>
    </message>
    <message>
        <source>lightening</source>
        <translation>decoloración</translation>
    </message>
    <message>
        <source>permanent colour</source>
        <translation>color permanente</translation>
    </message>
    <message>
        <source>colour mixed with peroxide</source>
        <translation>color mezclado con peróxido</translation>
    </message>
    <message>
        <source>a dye</source>
        <translation>un tinte</translation>
    </message>
    <message>
        <source>colour or lightening</source>
        <translation>color o decoloración</translation>
    </message>
    <message>
        <source>henna</source>
        <translation>henna</translation>
    </message>
    <message>
        <source>a heat-set smoothing treatment</source>
        <translation>un alisado fijado con calor</translation>
    </message>
    <message>
        <source>a chemical service</source>
        <translation>un servicio químico</translation>
    </message>
    <message>
        <source>a protein treatment</source>
        <translation>un tratamiento de proteína</translation>
    </message>
    <message>
        <source>heat styling</source>
        <translation>peinado con calor</translation>
    </message>
    <message>
        <source>a protective style</source>
        <translation>un peinado protector</translation>
    </message>
    <message>
        <source>a cut</source>
        <translation>un corte</translation>
    </message>
    <message>
        <source>Ask how old the client is.</source>
        <translation>Pregunte la edad de la clienta.</translation>
    </message>
    <message>
        <source>Measure how long the hair is.</source>
        <translation>Mida el largo del cabello.</translation>
    </message>
    <message>
        <source>Do one gentle pull of about 50 to 60 hairs and count what comes out.</source>
        <translation>Dé un tirón suave a unos 50 o 60 cabellos y cuente los que salen.</translation>
    </message>
    <message>
        <source>Comb for 60 seconds over a cloth before washing and count the hairs.</source>
        <translation>Peine 60 segundos sobre un paño antes de lavar y cuente los cabellos.</translation>
    </message>
    <message>
        <source>Ask whether the client is pregnant or breastfeeding.</source>
        <translation>Pregunte si la clienta está embarazada o da el pecho.</translation>
    </message>
    <message>
        <source>Ask about medicines or treatments, also those that thin the skin or the blood or make hair fall.</source>
        <translation>Pregunte por medicamentos o tratamientos, también los que afinan la piel o la sangre o hacen caer el cabello.</translation>
    </message>
    <message>
        <source>Ask whether the scalp was scratched or brushed hard in the last 48 hours.</source>
        <translation>Pregunte si se rascó o cepilló fuerte el cuero cabelludo en las últimas 48 horas.</translation>
    </message>
    <message>
        <source>Ask whether the scalp was washed in the last 24 hours.</source>
        <translation>Pregunte si se lavó el cuero cabelludo en las últimas 24 horas.</translation>
    </message>
    <message>
        <source>Part the hair and look for open, weeping, crusted or burnt places.</source>
        <translation>Separe el cabello y busque zonas abiertas, que supuren, con costra o quemadas.</translation>
    </message>
    <message>
        <source>Ask whether the scalp hurts, burns or stings.</source>
        <translation>Pregunte si el cuero cabelludo duele, arde o escuece.</translation>
    </message>
    <message>
        <source>Look for pimples, pustules, crusts or thick scale along the hairline.</source>
        <translation>Busque granos, pústulas, costras o escamas gruesas a lo largo de la línea del cabello.</translation>
    </message>
    <message>
        <source>Ask about pins and needles where the hair gets thinner.</source>
        <translation>Pregunte por hormigueo donde el cabello se afina.</translation>
    </message>
    <message>
        <source>Look for a rash on face, ears and neck.</source>
        <translation>Busque sarpullido en cara, orejas y cuello.</translation>
    </message>
    <message>
        <source>Ask whether hair was lost suddenly.</source>
        <translation>Pregunte si perdió cabello de repente.</translation>
    </message>
    <message>
        <source>Part the hair and look for bald patches.</source>
        <translation>Separe el cabello y busque placas sin cabello.</translation>
    </message>
    <message>
        <source>Look whether the thin skin is smooth and shiny, without openings of hairs.</source>
        <translation>Mire si la piel rala está lisa y brillante, sin salidas de cabello.</translation>
    </message>
    <message>
        <source>Ask whether the eyebrows have become thinner.</source>
        <translation>Pregunte si las cejas se han afinado.</translation>
    </message>
    <message>
        <source>Ask whether hair still gets thinner half a year after pulling styles stopped.</source>
        <translation>Pregunte si el cabello sigue afinándose medio año después de dejar los peinados que tiran.</translation>
    </message>
    <message>
        <source>Ask whether a hair product ever made the face swell or breathing hard.</source>
        <translation>Pregunte si un producto para el cabello hizo alguna vez que se hinchara la cara o costara respirar.</translation>
    </message>
    <message>
        <source>Ask about any rash, itch or swelling after a hair dye.</source>
        <translation>Pregunte por sarpullido, picor o hinchazón tras un tinte.</translation>
    </message>
    <message>
        <source>Ask about a black henna tattoo that itched or blistered.</source>
        <translation>Pregunte por un tatuaje de henna negra que picara o hiciera ampollas.</translation>
    </message>
    <message>
        <source>Ask whether a straightener ever burnt the scalp.</source>
        <translation>Pregunte si un alisador quemó alguna vez el cuero cabelludo.</translation>
    </message>
    <message>
        <source>Ask whether the water at home is hard.</source>
        <translation>Pregunte si el agua de casa es dura.</translation>
    </message>
    <message>
        <source>Ask whether the hair is covered during the day.</source>
        <translation>Pregunte si el cabello va cubierto durante el día.</translation>
    </message>
    <message>
        <source>Ask whether caps, bands or helmets press on the hairline.</source>
        <translation>Pregunte si gorros, cintas o cascos aprietan en la línea del cabello.</translation>
    </message>
    <message>
        <source>Ask how the hair is kept at night.</source>
        <translation>Pregunte cómo lleva el cabello por la noche.</translation>
    </message>
    <message>
        <source>Ask about tight braids, buns, tails, weaves or locks.</source>
        <translation>Pregunte por trenzas tirantes, moños, coletas, extensiones cosidas o rastas.</translation>
    </message>
    <message>
        <source>Ask whether a style hurts while it is put in or afterwards.</source>
        <translation>Pregunte si un peinado duele al hacerlo o después.</translation>
    </message>
    <message>
        <source>Ask whether hair is added to braids, locks or weaves.</source>
        <translation>Pregunte si se añade cabello a trenzas, rastas o extensiones.</translation>
    </message>
    <message>
        <source>Ask how many weeks one style stays in.</source>
        <translation>Pregunte cuántas semanas dura un mismo peinado.</translation>
    </message>
    <message>
        <source>Ask how many minutes a day there are for the hair.</source>
        <translation>Pregunte cuántos minutos al día hay para el cabello.</translation>
    </message>
    <message>
        <source>Ask how often a week the client swims.</source>
        <translation>Pregunte cuántas veces por semana nada la clienta.</translation>
    </message>
    <message>
        <source>Ask how often a week the hair is washed.</source>
        <translation>Pregunte cuántas veces por semana se lava el cabello.</translation>
    </message>
    <message>
        <source>Ask how often a week heat tools are used.</source>
        <translation>Pregunte cuántas veces por semana se usa calor.</translation>
    </message>
    <message>
        <source>Ask how hot the heat tools at home are set.</source>
        <translation>Pregunte a qué temperatura están las herramientas de calor en casa.</translation>
    </message>
    <message>
        <source>Ask whether an iron ever touches damp hair at home.</source>
        <translation>Pregunte si en casa una plancha toca alguna vez cabello húmedo.</translation>
    </message>
    <message>
        <source>Ask whether this hair has been through %1 by anybody, when, and how far along its length.</source>
        <translation>Pregunte si este cabello ha pasado por %1, con quien fuera, cuándo y hasta dónde del largo.</translation>
    </message>
    <message>
        <source>Wet a strand and grade the porosity of roots, mid-shaft and ends.</source>
        <translation>Moje un mechón y valore la porosidad de raíces, medios y puntas.</translation>
    </message>
    <message>
        <source>Stretch a wet strand and grade the elasticity of roots, mid-shaft and ends.</source>
        <translation>Estire un mechón mojado y valore la elasticidad de raíces, medios y puntas.</translation>
    </message>
    <message>
        <source>Comb through once and grade the breakage of roots, mid-shaft and ends.</source>
        <translation>Peine una vez y valore la rotura de raíces, medios y puntas.</translation>
    </message>
    <message>
        <source>Part the hair and grade the scalp of every section.</source>
        <translation>Separe el cabello y valore el cuero cabelludo de cada sección.</translation>
    </message>
    <message>
        <source>Grade the edges of every section.</source>
        <translation>Valore el contorno de cada sección.</translation>
    </message>
    <message>
        <source>Feel single hairs: fine, medium or coarse?</source>
        <translation>Palpe cabellos sueltos: ¿finos, medios o gruesos?</translation>
    </message>
    <message>
        <source>Measure the edges again.</source>
        <translation>Mida de nuevo el contorno.</translation>
    </message>
    <message>
        <source>Do the timed comb-through again.</source>
        <translation>Haga de nuevo el peinado cronometrado.</translation>
    </message>
    <message>
        <source>Look at the colour along strands of several sections: even or not?</source>
        <translation>Mire el color a lo largo de mechones de varias secciones: ¿uniforme o no?</translation>
    </message>
    <message>
        <source>Measure the new growth to the line of demarcation.</source>
        <translation>Mida el crecimiento hasta la línea de demarcación.</translation>
    </message>
    <message>
        <source>Choose the strength and write it down.</source>
        <translation>Elija la fuerza y anótela.</translation>
    </message>
    <message>
        <source>Read the longest time in the maker&apos;s directions and plan the minutes.</source>
        <translation>Lea el tiempo máximo en las instrucciones del fabricante y planee los minutos.</translation>
    </message>
    <message>
        <source>Set the tool&apos;s temperature and write it down.</source>
        <translation>Ajuste la temperatura de la herramienta y anótela.</translation>
    </message>
    <message>
        <source>Plan how often the tool passes over one strand.</source>
        <translation>Planee cuántas veces pasa la herramienta por un mechón.</translation>
    </message>
    <message>
        <source>Ask whether this is to be done at home.</source>
        <translation>Pregunte si se va a hacer en casa.</translation>
    </message>
    <message>
        <source>Say whether the product touches the scalp.</source>
        <translation>Diga si el producto toca el cuero cabelludo.</translation>
    </message>
    <message>
        <source>Read label and safety data sheet for formaldehyde and its other names (methylene glycol, formalin, methanal).</source>
        <translation>Lea la etiqueta y la ficha de datos de seguridad en busca de formaldehído y sus otros nombres (metilenglicol, formol, metanal).</translation>
    </message>
    <message>
        <source>Look for the product&apos;s safety data sheet.</source>
        <translation>Busque la ficha de datos de seguridad del producto.</translation>
    </message>
    <message>
        <source>Feel whether the hair is dry to its core.</source>
        <translation>Palpe si el cabello está seco hasta el interior.</translation>
    </message>
    <message>
        <source>Say whether a heat protectant is used.</source>
        <translation>Diga si se usa protector térmico.</translation>
    </message>
    <message>
        <source>Do a strand test on the weakest hair.</source>
        <translation>Haga una prueba de mechón en el cabello más débil.</translation>
    </message>
    <message>
        <source>Read the strand test and write down how it ended.</source>
        <translation>Lea la prueba de mechón y anote cómo terminó.</translation>
    </message>
    <message>
        <source>Ask whether this very product was patch-tested.</source>
        <translation>Pregunte si se hizo prueba de alergia con este mismo producto.</translation>
    </message>
    <message>
        <source>Look at the place of the patch test.</source>
        <translation>Mire el lugar de la prueba de alergia.</translation>
    </message>
    <message>
        <source>Ask when the patch test was put on.</source>
        <translation>Pregunte cuándo se puso la prueba de alergia.</translation>
    </message>
    <message>
        <source>Say whether the style pulls on the hair.</source>
        <translation>Diga si el peinado tira del cabello.</translation>
    </message>
    <message>
        <source>Say whether hair is added to the style.</source>
        <translation>Diga si se añade cabello al peinado.</translation>
    </message>
    <message>
        <source>The sharpness could not be measured at the card.</source>
        <translation>No se pudo medir la nitidez en la tarjeta.</translation>
    </message>
    <message>
        <source>Keep the card&apos;s corners free and evenly lit.</source>
        <translation>Deje las esquinas de la tarjeta libres y con luz uniforme.</translation>
    </message>
    <message>
        <source>The photo is blurred: edges at the card spread over %1 mm.</source>
        <translation>La foto está movida o desenfocada: los bordes de la tarjeta se extienden %1 mm.</translation>
    </message>
    <message>
        <source>The photo is blurred: edges at the card spread over %1 mm, wider than two hairs.</source>
        <translation>La foto está movida o desenfocada: los bordes de la tarjeta se extienden %1 mm, más que dos cabellos.</translation>
    </message>
    <message>
        <source>Come closer: the photo is as sharp as its pixels allow at this distance.</source>
        <translation>Acérquese: a esta distancia la foto es tan nítida como permiten sus píxeles.</translation>
    </message>
    <message>
        <source>Hold still, tap on the hair to focus, come no closer than the camera can focus, and use more light.</source>
        <translation>Sujete firme, toque el cabello para enfocar, no se acerque más de lo que la cámara enfoca y use más luz.</translation>
    </message>
    <message>
        <source>With %1 pixels per mm single strands cannot be counted.</source>
        <translation>Con %1 píxeles por mm no se pueden contar hebras sueltas.</translation>
    </message>
    <message>
        <source>Come closer for counts: 20 pixels per mm and more.</source>
        <translation>Para contar, acérquese: 20 píxeles por mm o más.</translation>
    </message>
    <message>
        <source>With edges that spread over %1 mm neighbouring hairs run together, so single strands cannot be counted.</source>
        <translation>Con bordes que se extienden %1 mm los cabellos vecinos se funden, así que no se pueden contar hebras sueltas.</translation>
    </message>
    <message>
        <source>Focus on the hair and hold still for counts: edges must rise within %1 mm.</source>
        <translation>Para contar, enfoque el cabello y sujete firme: los bordes deben definirse en %1 mm.</translation>
    </message>
    <message>
        <source>It is not known how sharp this photo is, so single strands are not counted.</source>
        <translation>No se sabe cuán nítida es esta foto, así que no se cuentan hebras sueltas.</translation>
    </message>
    <message>
        <source>Photograph with the gauge card for counts: the sharpness is measured at its edges.</source>
        <translation>Para contar, fotografíe con la tarjeta de medida: la nitidez se mide en sus bordes.</translation>
    </message>
    <message>
        <source>The photo has no scale, so nothing can be measured in millimetres.</source>
        <translation>La foto no tiene escala, así que nada se puede medir en milímetros.</translation>
    </message>
    <message>
        <source>Photograph with the gauge card, or set two points a known distance apart.</source>
        <translation>Fotografíe con la tarjeta de medida, o marque dos puntos a una distancia conocida.</translation>
    </message>
    <message>
        <source>The photo can still be compared by eye.</source>
        <translation>Aun así, la foto se puede comparar a simple vista.</translation>
    </message>
    <message>
        <source>The photo has only %1 pixels per mm; below %2 hairs cannot be told from the scalp between them, so nothing is measured.</source>
        <translation>La foto tiene solo %1 píxeles por mm; por debajo de %2 no se distinguen los cabellos del cuero cabelludo, así que no se mide nada.</translation>
    </message>
    <message>
        <source>Come closer: 12 pixels per mm are wanted for coverage, 20 and more for counting strands.</source>
        <translation>Acérquese: para la cobertura hacen falta 12 píxeles por mm, y 20 o más para contar hebras.</translation>
    </message>
    <message>
        <source>The camera looks at the card at a slant of %1 degrees.</source>
        <translation>La cámara mira la tarjeta con una inclinación de %1 grados.</translation>
    </message>
    <message>
        <source>Hold the phone parallel to the card.</source>
        <translation>Sujete el teléfono paralelo a la tarjeta.</translation>
    </message>
    <message>
        <source>With %1 pixels per mm single hairs melt together: only coverage can be given, and that roughly.</source>
        <translation>Con %1 píxeles por mm los cabellos se funden: solo se puede dar la cobertura, y de forma aproximada.</translation>
    </message>
    <message>
        <source>Come closer: 12 pixels per mm are wanted for all readings in mm, 20 for counts.</source>
        <translation>Acérquese: para todas las medidas en mm hacen falta 12 píxeles por mm, y 20 para contar.</translation>
    </message>
    <message>
        <source>The light changes by %1 % per cm over the card.</source>
        <translation>La luz cambia un %1 % por cm sobre la tarjeta.</translation>
    </message>
    <message>
        <source>Move the lamp further away or turn the client so that no shadow falls on the hair or the card.</source>
        <translation>Aleje la lámpara o gire a la clienta para que ninguna sombra caiga sobre el cabello o la tarjeta.</translation>
    </message>
    <message>
        <source>%1 % of the region is burnt out or pitch black.</source>
        <translation>El %1 % de la zona está quemado o completamente negro.</translation>
    </message>
    <message>
        <source>Lower or raise the exposure (tap and slide on the phone), no flash, softer light.</source>
        <translation>Baje o suba la exposición (toque y deslice en el teléfono), sin flash, luz más suave.</translation>
    </message>
    <message>
        <source>One corner of the card is hidden or outside the photo; the other three were used.</source>
        <translation>Una esquina de la tarjeta está tapada o fuera de la foto; se usaron las otras tres.</translation>
    </message>
    <message>
        <source>Half of the card is hidden or outside the photo; the scale rests on two corners.</source>
        <translation>Media tarjeta está tapada o fuera de la foto; la escala se apoya en dos esquinas.</translation>
    </message>
    <message>
        <source>Keep hair, hands and clips off the card and the whole card in the photo.</source>
        <translation>Deje la tarjeta libre de cabello, manos y pinzas, y entera dentro de la foto.</translation>
    </message>
    <message>
        <source>The card&apos;s corners do not lie in one plane.</source>
        <translation>Las esquinas de la tarjeta no están en un mismo plano.</translation>
    </message>
    <message>
        <source>Glue the card on stiff board and lay it flat beside the hair.</source>
        <translation>Pegue la tarjeta en cartón rígido y póngala plana junto al cabello.</translation>
    </message>
    <message>
        <source>Only the gauge sheet is in the photo, so colours and shine cannot be corrected for the light.</source>
        <translation>Solo la hoja de medida está en la foto, así que ni el color ni el brillo se pueden corregir según la luz.</translation>
    </message>
    <message>
        <source>Lay the gauge card on the sheet as well.</source>
        <translation>Ponga también la tarjeta de medida sobre la hoja.</translation>
    </message>
    <message>
        <source>No gauge card was found in the photo.</source>
        <translation>No se encontró ninguna tarjeta de medida en la foto.</translation>
    </message>
    <message>
        <source>Lay the gauge card flat beside the hair, in focus and with all four corners in view, from 15 to 30 cm.</source>
        <translation>Ponga la tarjeta plana junto al cabello, enfocada y con las cuatro esquinas a la vista, a entre 15 y 30 cm.</translation>
    </message>
    <message>
        <source>The scale comes from two points: tilt, sharpness and light are not known.</source>
        <translation>La escala sale de dos puntos: no se conocen la inclinación, la nitidez ni la luz.</translation>
    </message>
    <message>
        <source>Use the gauge card for photos that are to be compared.</source>
        <translation>Use la tarjeta de medida en las fotos que se vayan a comparar.</translation>
    </message>
    <message>
        <source>The card&apos;s grey patches are burnt out to white, so the light cannot be measured.</source>
        <translation>Los grises de la tarjeta están quemados, así que no se puede medir la luz.</translation>
    </message>
    <message>
        <source>The card&apos;s grey patches cannot be read, so the light cannot be measured.</source>
        <translation>Los grises de la tarjeta no se pueden leer, así que no se puede medir la luz.</translation>
    </message>
    <message>
        <source>Take the photo again with the whole card in view and less light on it.</source>
        <translation>Repita la foto con la tarjeta entera a la vista y menos luz sobre ella.</translation>
    </message>
    <message>
        <source>The card&apos;s grey steps do not follow any plain tone curve, so only the colour of the light was corrected.</source>
        <translation>Los grises de la tarjeta no siguen ninguna curva de tono sencilla, así que solo se corrigió el color de la luz.</translation>
    </message>
    <message>
        <source>Keep shadows, hands and hair off the grey patches, print the card without colour effects, and switch the camera&apos;s filters off.</source>
        <translation>Deje los grises libres de sombras, manos y cabello, imprima la tarjeta sin efectos de color y desactive los filtros de la cámara.</translation>
    </message>
    <message>
        <source>The light is strongly coloured.</source>
        <translation>La luz tiene un color muy marcado.</translation>
    </message>
    <message>
        <source>Use white light (daylight or a white lamp) and switch coloured lamps off.</source>
        <translation>Use luz blanca (de día o una lámpara blanca) y apague las lámparas de color.</translation>
    </message>
    <message>
        <source>Without the gauge card or two scale points nothing can be measured in millimetres.</source>
        <translation>Sin la tarjeta de medida o dos puntos de escala nada se puede medir en milímetros.</translation>
    </message>
    <message>
        <source>The photo is kept and can be compared by eye.</source>
        <translation>La foto queda guardada y se puede comparar a simple vista.</translation>
    </message>
    <message>
        <source>Lay the card beside the hair, or mark two points a known distance apart.</source>
        <translation>Ponga la tarjeta junto al cabello, o marque dos puntos a una distancia conocida.</translation>
    </message>
    <message>
        <source>Lay the card beside the hair.</source>
        <translation>Ponga la tarjeta junto al cabello.</translation>
    </message>
    <message>
        <source>Lay the card beside the hair, in the same light.</source>
        <translation>Ponga la tarjeta junto al cabello, con la misma luz.</translation>
    </message>
    <message>
        <source>Hair and scalp have nearly the same colour in this photo, so they cannot be told apart.</source>
        <translation>En esta foto el cabello y el cuero cabelludo tienen casi el mismo color, así que no se distinguen.</translation>
    </message>
    <message>
        <source>More than a fifth of the band lies outside the photo or under the card.</source>
        <translation>Más de una quinta parte de la franja queda fuera de la foto o bajo la tarjeta.</translation>
    </message>
    <message>
        <source>Single strands need a closer photo: 20 px/mm or more.</source>
        <translation>Para hebras sueltas hace falta una foto más cercana: 20 px/mm o más.</translation>
    </message>
    <message>
        <source>The strands lie in a closed mat here (over 40 % covered), so single ones cannot be counted.</source>
        <translation>Aquí las hebras forman una capa cerrada (más del 40 % cubierto), así que no se pueden contar una a una.</translation>
    </message>
    <message>
        <source>The 15-20 mm zone that fill depth is measured against lies outside the photo.</source>
        <translation>La zona de 15 a 20 mm con la que se mide la profundidad de relleno queda fuera de la foto.</translation>
    </message>
    <message>
        <source>There is hardly any hair 15-20 mm in, so there is no full depth to measure against.</source>
        <translation>A 15-20 mm casi no hay cabello, así que no hay una densidad plena con la que comparar.</translation>
    </message>
    <message>
        <source>Coverage never reaches half of the 15-20 mm zone.</source>
        <translation>La cobertura nunca llega a la mitad de la zona de 15 a 20 mm.</translation>
    </message>
    <message>
        <source>The photo could not be measured (%1).</source>
        <translation>No se pudo medir la foto (%1).</translation>
    </message>
    <message>
        <source>The photo and the marks are kept.</source>
        <translation>La foto y las marcas quedan guardadas.</translation>
    </message>
    <message>
        <source>Try another shot; if it happens again, report it with the photo.</source>
        <translation>Pruebe con otra toma; si vuelve a ocurrir, avise y adjunte la foto.</translation>
    </message>
    <message>
        <source>The edge line has fewer than two points.</source>
        <translation>La línea del contorno tiene menos de dos puntos.</translation>
    </message>
    <message>
        <source>Draw it along the first hairs.</source>
        <translation>Dibújela a lo largo de los primeros cabellos.</translation>
    </message>
    <message>
        <source>The edge line leaves the photo.</source>
        <translation>La línea del contorno se sale de la foto.</translation>
    </message>
    <message>
        <source>Keep all its points on the picture.</source>
        <translation>Mantenga todos sus puntos dentro de la imagen.</translation>
    </message>
    <message>
        <source>The edge line crosses itself.</source>
        <translation>La línea del contorno se cruza consigo misma.</translation>
    </message>
    <message>
        <source>Draw it once from one side to the other.</source>
        <translation>Dibújela una vez de un lado al otro.</translation>
    </message>
    <message>
        <source>The edge line is longer than 400 mm, so the scale cannot be right.</source>
        <translation>La línea del contorno mide más de 400 mm, así que la escala no puede ser correcta.</translation>
    </message>
    <message>
        <source>The edge line is shorter than 10 mm.</source>
        <translation>La línea del contorno mide menos de 10 mm.</translation>
    </message>
    <message>
        <source>Check the card or the two scale points.</source>
        <translation>Revise la tarjeta o los dos puntos de escala.</translation>
    </message>
    <message>
        <source>Draw at least 10 mm of the edge.</source>
        <translation>Dibuje al menos 10 mm del contorno.</translation>
    </message>
    <message>
        <source>The hair-side mark lies on the edge line itself.</source>
        <translation>La marca del lado del cabello está sobre la propia línea.</translation>
    </message>
    <message>
        <source>Put it well inside the hair.</source>
        <translation>Póngala bien dentro del cabello.</translation>
    </message>
    <message>
        <source>Too little bare skin can be seen outside the edge line to know its colour.</source>
        <translation>Se ve muy poca piel fuera de la línea para conocer su color.</translation>
    </message>
    <message>
        <source>Leave a few millimetres of skin beside the line free, or tap bare scalp twice.</source>
        <translation>Deje unos milímetros de piel libres junto a la línea, o toque dos veces el cuero cabelludo descubierto.</translation>
    </message>
    <message>
        <source>Shine is a matter of light, and without the card&apos;s grey patches the light is not known.</source>
        <translation>El brillo depende de la luz, y sin los grises de la tarjeta no se conoce la luz.</translation>
    </message>
    <message>
        <source>The region is longer than 50 cm, so the scale cannot be right.</source>
        <translation>La zona mide más de 50 cm, así que la escala no puede ser correcta.</translation>
    </message>
    <message>
        <source>The region is too small to hold a highlight and its feet.</source>
        <translation>La zona es demasiado pequeña para contener un brillo completo.</translation>
    </message>
    <message>
        <source>The region is too short along the fibres to hold a highlight and its feet.</source>
        <translation>La zona es demasiado corta a lo largo de las fibras para contener un brillo completo.</translation>
    </message>
    <message>
        <source>The hair runs in too many directions here for one highlight across it.</source>
        <translation>Aquí el cabello va en demasiadas direcciones para un solo brillo.</translation>
    </message>
    <message>
        <source>Part of the region is burnt out to white, so the highlight has no top.</source>
        <translation>Parte de la zona está quemada, así que el brillo no tiene punto más alto.</translation>
    </message>
    <message>
        <source>Part of the region is as black as the photo can be, so the hair&apos;s own light is not known.</source>
        <translation>Parte de la zona es todo lo negra que puede ser la foto, así que no se conoce la luz propia del cabello.</translation>
    </message>
    <message>
        <source>No highlight stands out from the hair&apos;s own light in this region.</source>
        <translation>En esta zona ningún brillo destaca sobre la luz propia del cabello.</translation>
    </message>
    <message>
        <source>The highlight reaches over an end of the region, so it cannot be read whole.</source>
        <translation>El brillo sobrepasa un extremo de la zona, así que no se puede leer entero.</translation>
    </message>
    <message>
        <source>The highlight is too faint for its width to be told.</source>
        <translation>El brillo es demasiado débil para saber su ancho.</translation>
    </message>
    <message>
        <source>The region could not be read: %1</source>
        <translation>No se pudo leer la zona: %1</translation>
    </message>
    <message>
        <source>Draw the region again.</source>
        <translation>Dibuje la zona de nuevo.</translation>
    </message>
    <message>
        <source>The shine region does not have four corners.</source>
        <translation>La zona de brillo no tiene cuatro esquinas.</translation>
    </message>
    <message>
        <source>Draw it as a four-sided shape over the highlight.</source>
        <translation>Dibújela como una figura de cuatro lados sobre el brillo.</translation>
    </message>
    <message>
        <source>The shine region leaves the photo.</source>
        <translation>La zona de brillo se sale de la foto.</translation>
    </message>
    <message>
        <source>Keep all its corners on the picture.</source>
        <translation>Mantenga todas sus esquinas dentro de la imagen.</translation>
    </message>
    <message>
        <source>The sides of the shine region cross each other.</source>
        <translation>Los lados de la zona de brillo se cruzan.</translation>
    </message>
    <message>
        <source>Set its corners in order around.</source>
        <translation>Ponga sus esquinas en orden, una tras otra.</translation>
    </message>
    <message>
        <source>The strand runs over the gauge card.</source>
        <translation>La hebra pasa sobre la tarjeta de medida.</translation>
    </message>
    <message>
        <source>Part of the strand lies outside the photo.</source>
        <translation>Parte de la hebra queda fuera de la foto.</translation>
    </message>
    <message>
        <source>The strand is burnt out to white in places, so its colour is lost.</source>
        <translation>La hebra está quemada en algunos puntos, así que su color se ha perdido.</translation>
    </message>
    <message>
        <source>The strand is so dark in this photo that its colour cannot be told.</source>
        <translation>La hebra sale tan oscura en esta foto que no se puede saber su color.</translation>
    </message>
    <message>
        <source>Without the gauge card nothing can be measured along the strand.</source>
        <translation>Sin la tarjeta de medida nada se puede medir a lo largo de la hebra.</translation>
    </message>
    <message>
        <source>Without the gauge card&apos;s grey patches the colour of the light is not known.</source>
        <translation>Sin los grises de la tarjeta de medida no se conoce el color de la luz.</translation>
    </message>
    <message>
        <source>Too little of the strand can be seen to tell its colours.</source>
        <translation>Se ve muy poco de la hebra para conocer sus colores.</translation>
    </message>
    <message>
        <source>A highlight hides the colour of the hair; use softer light, or turn the head a little.</source>
        <translation>Un brillo tapa el color del cabello; use luz más suave o gire un poco la cabeza.</translation>
    </message>
    <message>
        <source>The strand line leaves the photo.</source>
        <translation>La línea de la hebra se sale de la foto.</translation>
    </message>
    <message>
        <source>The strand line has fewer than two points.</source>
        <translation>La línea de la hebra tiene menos de dos puntos.</translation>
    </message>
    <message>
        <source>Draw it along a strand, from the scalp to the ends.</source>
        <translation>Dibújela a lo largo de una hebra, del cuero cabelludo a las puntas.</translation>
    </message>
    <message>
        <source>The strand line is longer than a metre, so the scale cannot be right.</source>
        <translation>La línea de la hebra mide más de un metro, así que la escala no puede ser correcta.</translation>
    </message>
    <message>
        <source>Check the gauge card in the photo.</source>
        <translation>Revise la tarjeta de medida en la foto.</translation>
    </message>
    <message>
        <source>The strand line is too short to tell root, mid-shaft and ends apart.</source>
        <translation>La línea de la hebra es demasiado corta para distinguir raíz, medios y puntas.</translation>
    </message>
    <message>
        <source>Less than 20 mm of paper around the hair lies in the region, so hairs that stand off would be missed.</source>
        <translation>En la zona hay menos de 20 mm de papel alrededor del cabello, así que se perderían cabellos sueltos.</translation>
    </message>
    <message>
        <source>No bare paper was seen around the ends: the region must reach the sheet&apos;s white beyond them.</source>
        <translation>No se vio papel libre alrededor de las puntas: la zona debe llegar al blanco de la hoja más allá de ellas.</translation>
    </message>
    <message>
        <source>The hair is about as light as the sheet in this photo, so the two cannot be told apart: lay it on something dark.</source>
        <translation>En esta foto el cabello es casi tan claro como la hoja, así que no se distinguen: póngalo sobre algo oscuro.</translation>
    </message>
    <message>
        <source>No hair was seen in the region.</source>
        <translation>No se vio cabello en la zona.</translation>
    </message>
    <message>
        <source>No hair comes in through the region&apos;s first side: that side must lie across the hair.</source>
        <translation>Por el primer lado de la zona no entra cabello: ese lado debe cruzar el cabello.</translation>
    </message>
    <message>
        <source>The hair is narrower than %1 mm at its ends: too little to tell an even hem from an uneven one.</source>
        <translation>En las puntas el cabello mide menos de %1 mm de ancho: muy poco para distinguir un borde regular de uno desigual.</translation>
    </message>
    <message>
        <source>The hair runs out of the region: it must reach bare paper beyond the ends.</source>
        <translation>El cabello se sale de la zona: debe llegar a papel libre más allá de las puntas.</translation>
    </message>
    <message>
        <source>The region holds less than %1 mm of the hair above its ends, so there is nothing full to compare them with.</source>
        <translation>La zona contiene menos de %1 mm de cabello por encima de las puntas, así que no hay nada lleno con que compararlas.</translation>
    </message>
    <message>
        <source>The ends lie in separate locks with wide gaps between them: comb them together or lay fewer.</source>
        <translation>Las puntas están en mechones separados con huecos anchos: péinelas juntas o ponga menos.</translation>
    </message>
    <message>
        <source>Neither the gauge sheet nor the gauge card was found, so nothing can be measured in millimetres.</source>
        <translation>No se encontró ni la hoja ni la tarjeta de medida, así que nada se puede medir en milímetros.</translation>
    </message>
    <message>
        <source>Lay the ends on the sheet with all its corners in view, or with the card beside them.</source>
        <translation>Ponga las puntas sobre la hoja con todas sus esquinas a la vista, o con la tarjeta al lado.</translation>
    </message>
    <message>
        <source>The photo has fewer than %1 pixels per mm at the ends: come closer.</source>
        <translation>La foto tiene menos de %1 píxeles por mm en las puntas: acérquese.</translation>
    </message>
    <message>
        <source>The region is narrower than %1 mm: too little to tell an even hem from an uneven one.</source>
        <translation>La zona mide menos de %1 mm de ancho: muy poco para distinguir un borde regular de uno desigual.</translation>
    </message>
    <message>
        <source>The region around the ends does not have four corners.</source>
        <translation>La zona alrededor de las puntas no tiene cuatro esquinas.</translation>
    </message>
    <message>
        <source>Draw it with four corners, the first side lying in the hair.</source>
        <translation>Dibújela con cuatro esquinas, con el primer lado dentro del cabello.</translation>
    </message>
    <message>
        <source>The region around the ends leaves the photo.</source>
        <translation>La zona alrededor de las puntas se sale de la foto.</translation>
    </message>
    <message>
        <source>Keep its four corners on the picture.</source>
        <translation>Mantenga sus cuatro esquinas dentro de la imagen.</translation>
    </message>
    <message>
        <source>The sides of the region cross or fold inward.</source>
        <translation>Los lados de la zona se cruzan o se doblan hacia dentro.</translation>
    </message>
    <message>
        <source>Draw the four corners in order around the ends.</source>
        <translation>Ponga las cuatro esquinas en orden alrededor de las puntas.</translation>
    </message>
    <message>
        <source>Too many lines lie on the sheet to tell single strands apart.</source>
        <translation>Hay demasiadas líneas en la hoja para distinguir hebras sueltas.</translation>
    </message>
    <message>
        <source>The photo is kept.</source>
        <translation>La foto queda guardada.</translation>
    </message>
    <message>
        <source>Spread the strands on two sheets or more, and take a photo of each.</source>
        <translation>Reparta las hebras en dos hojas o más y haga una foto de cada una.</translation>
    </message>
    <message>
        <source>Strands are measured on the gauge sheet, and none was found in the photo.</source>
        <translation>Las hebras se miden sobre la hoja de medida, y no se encontró ninguna en la foto.</translation>
    </message>
    <message>
        <source>Lay the strands on the gauge sheet with all four of its corners in the photo.</source>
        <translation>Ponga las hebras sobre la hoja de medida con sus cuatro esquinas dentro de la foto.</translation>
    </message>
    <message>
        <source>The photo shows the sheet too small to see single strands.</source>
        <translation>La hoja sale demasiado pequeña en la foto para ver hebras sueltas.</translation>
    </message>
    <message>
        <source>Let the sheet fill the photo, at the phone&apos;s full resolution.</source>
        <translation>Que la hoja llene la foto, con toda la resolución del teléfono.</translation>
    </message>
    <message>
        <source>The strands could not be followed through their crossings.</source>
        <translation>No se pudo seguir las hebras a través de sus cruces.</translation>
    </message>
    <message>
        <source>Spread them further apart, or take those out that are none and join those that are one.</source>
        <translation>Sepárelas más, o quite las que no lo son y una las que son una sola.</translation>
    </message>
    <message>
        <source>No strands were found on the sheet.</source>
        <translation>No se encontraron hebras en la hoja.</translation>
    </message>
    <message>
        <source>No strand of 20 mm or more lies on the sheet.</source>
        <translation>En la hoja no hay ninguna hebra de 20 mm o más.</translation>
    </message>
    <message>
        <source>The strands are too faint in this photo to tell how they bend.</source>
        <translation>En esta foto las hebras se ven demasiado tenues para saber cómo se curvan.</translation>
    </message>
    <message>
        <source>Take it in brighter, even light.</source>
        <translation>Hágala con luz más viva y uniforme.</translation>
    </message>
    <message>
        <source>More than a third of the strands could not be followed from end to end without a guess.</source>
        <translation>Más de un tercio de las hebras no se pudo seguir de punta a punta sin adivinar.</translation>
    </message>
    <message>
        <source>Lay down a few strands that do not touch, away from the rim and the card.</source>
        <translation>Ponga unas pocas hebras que no se toquen, lejos del borde y de la tarjeta.</translation>
    </message>
    <message>
        <source>There is no gauge card and no known distance in the photo, so nothing can be given in mm.</source>
        <translation>En la foto no hay tarjeta de medida ni distancia conocida, así que nada se puede dar en mm.</translation>
    </message>
    <message>
        <source>Single strands need a closer photo than this one.</source>
        <translation>Para hebras sueltas hace falta una foto más cercana que esta.</translation>
    </message>
    <message>
        <source>These visits cannot be compared.</source>
        <translation>Estas visitas no se pueden comparar.</translation>
    </message>
    <message>
        <source>Both visits: %1</source>
        <translation>En ambas visitas: %1</translation>
    </message>
    <message>
        <source>Earlier visit: %1</source>
        <translation>En la primera visita: %1</translation>
    </message>
    <message>
        <source>Later visit: %1</source>
        <translation>En la segunda visita: %1</translation>
    </message>
    <message>
        <source>Both visits:</source>
        <translation>En ambas visitas:</translation>
    </message>
    <message>
        <source>Earlier visit:</source>
        <translation>En la primera visita:</translation>
    </message>
    <message>
        <source>Later visit:</source>
        <translation>En la segunda visita:</translation>
    </message>
    <message>
        <source>%1 rose by %2, from %3 to %4; the smallest change these shots can show is %5.</source>
        <translation>%1: subió %2, de %3 a %4; el menor cambio que estas tomas pueden mostrar es %5.</translation>
    </message>
    <message>
        <source>%1 fell by %2, from %3 to %4; the smallest change these shots can show is %5.</source>
        <translation>%1: bajó %2, de %3 a %4; el menor cambio que estas tomas pueden mostrar es %5.</translation>
    </message>
    <message>
        <source>%1 stayed at %2; the smallest change these shots can show is %3.</source>
        <translation>%1: se mantuvo en %2; el menor cambio que estas tomas pueden mostrar es %3.</translation>
    </message>
    <message>
        <source>%1 went from %2 to %3, up %4; that is within the %5 that these shots cannot tell from chance.</source>
        <translation>%1: pasó de %2 a %3, %4 más; eso está dentro de %5, que estas tomas no distinguen del azar.</translation>
    </message>
    <message>
        <source>%1 went from %2 to %3, down %4; that is within the %5 that these shots cannot tell from chance.</source>
        <translation>%1: pasó de %2 a %3, %4 menos; eso está dentro de %5, que estas tomas no distinguen del azar.</translation>
    </message>
    <message>
        <source>%1 was not measured at either visit.</source>
        <translation>%1: no se midió en ninguna de las dos visitas.</translation>
    </message>
    <message>
        <source>%1 was not measured at the earlier visit.</source>
        <translation>%1: no se midió en la primera visita.</translation>
    </message>
    <message>
        <source>%1 was not measured at the later visit.</source>
        <translation>%1: no se midió en la segunda visita.</translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation>%1 puntos</translation>
    </message>
    <message>
        <source>%1 point</source>
        <translation>%1 punto</translation>
    </message>
    <message>
        <source>%1 per cm</source>
        <translation>%1 por cm</translation>
    </message>
    <message>
        <source>%1 per mm</source>
        <translation>%1 por mm</translation>
    </message>
    <message>
        <source>%1 per in</source>
        <translation>%1 por pulgada</translation>
    </message>
    <message>
        <source>%1 in</source>
        <translation>%1 pulg.</translation>
    </message>
    <message>
        <source>There is no photo of this view.</source>
        <translation>No hay ninguna foto de esta vista.</translation>
    </message>
    <message>
        <source>No shot gives this reading.</source>
        <translation>Ninguna toma da esta medida.</translation>
    </message>
    <message>
        <source>The other shots have reasons of their own.</source>
        <translation>Las demás tomas tienen sus propias razones.</translation>
    </message>
    <message>
        <source>The hair was %1 at one visit and %2 at the other.</source>
        <translation>El cabello estaba %1 en una visita y %2 en la otra.</translation>
    </message>
    <message>
        <source>One visit was photographed with the gauge card, the other has its scale from two points only.</source>
        <translation>Una visita se fotografió con la tarjeta de medida; la otra solo tiene la escala de dos puntos.</translation>
    </message>
    <message>
        <source>The visits were measured by different versions of the method; measure the older photos again.</source>
        <translation>Las visitas se midieron con versiones distintas del método; mida de nuevo las fotos antiguas.</translation>
    </message>
    <message>
        <source>The line was drawn anew and is not measured yet.</source>
        <translation>La línea se dibujó de nuevo y aún no se ha medido.</translation>
    </message>
    <message>
        <source>the photo was refused at the gate.</source>
        <translation>la foto fue rechazada en el control.</translation>
    </message>
    <message>
        <source>The target is reached.</source>
        <translation>Se ha alcanzado el objetivo.</translation>
    </message>
    <message>
        <source>At the pace so far the target may be reached between %1 and %2.</source>
        <translation>Al ritmo actual, el objetivo puede alcanzarse entre el %1 y el %2.</translation>
    </message>
    <message>
        <source>At the pace so far the target is not reached before %1; no latest date can be given.</source>
        <translation>Al ritmo actual, el objetivo no se alcanza antes del %1; no se puede dar una fecha máxima.</translation>
    </message>
    <message>
        <source>The visits so far do not lead to the target within three years, so no date is given.</source>
        <translation>Las visitas hasta ahora no llevan al objetivo en tres años, así que no se da ninguna fecha.</translation>
    </message>
    <message>
        <source>No trend line: it takes %1 comparable visits, and there is %2.</source>
        <translation>Sin línea de tendencia: hacen falta %1 visitas comparables y hay %2.</translation>
    </message>
    <message>
        <source>No trend line: it takes %1 comparable visits, and there are %2.</source>
        <translation>Sin línea de tendencia: hacen falta %1 visitas comparables y hay %2.</translation>
    </message>
    <message>
        <source>No trend line: the visits do not lie on different days.</source>
        <translation>Sin línea de tendencia: las visitas no son de días distintos.</translation>
    </message>
    <message>
        <source>No forecast: %1</source>
        <translation>Sin pronóstico: %1</translation>
    </message>
    <message>
        <source>No forecast: the visits are too few for a range of dates.</source>
        <translation>Sin pronóstico: hay muy pocas visitas para un intervalo de fechas.</translation>
    </message>
    <message>
        <source>Over %1 visits %2 rose by %3 a month (95 % interval %4 to %5); Mann-Kendall p = %6, so the trend %7.</source>
        <translation>En %1 visitas, %2: subió %3 al mes (intervalo del 95 %: %4 a %5); Mann-Kendall p = %6, así que la tendencia %7.</translation>
    </message>
    <message>
        <source>Over %1 visits %2 fell by %3 a month (95 % interval %4 to %5); Mann-Kendall p = %6, so the trend %7.</source>
        <translation>En %1 visitas, %2: bajó %3 al mes (intervalo del 95 %: %4 a %5); Mann-Kendall p = %6, así que la tendencia %7.</translation>
    </message>
    <message>
        <source>Over %1 visits %2 rose by %3 a month; Mann-Kendall p = %4, so the trend %5.</source>
        <translation>En %1 visitas, %2: subió %3 al mes; Mann-Kendall p = %4, así que la tendencia %5.</translation>
    </message>
    <message>
        <source>Over %1 visits %2 fell by %3 a month; Mann-Kendall p = %4, so the trend %5.</source>
        <translation>En %1 visitas, %2: bajó %3 al mes; Mann-Kendall p = %4, así que la tendencia %5.</translation>
    </message>
    <message>
        <source>is more than chance</source>
        <translation>es más que azar</translation>
    </message>
    <message>
        <source>may be chance</source>
        <translation>puede ser azar</translation>
    </message>
    <message>
        <source>is more than chance, but all of it is less than the %1 that two visits can tell apart</source>
        <translation>es más que azar, pero toda ella es menor que %1, lo que dos visitas pueden distinguir</translation>
    </message>
    <message>
        <source>The noise comes from this client&apos;s own repeat shots at %1 visits.</source>
        <translation>El ruido sale de las tomas repetidas de esta clienta en %1 visitas.</translation>
    </message>
    <message>
        <source>The noise comes from this client&apos;s repeat shots (%1 degrees of freedom), filled up from the other repeat shots in the book.</source>
        <translation>El ruido sale de las tomas repetidas de esta clienta (%1 grados de libertad), completado con las demás tomas repetidas del libro.</translation>
    </message>
    <message>
        <source>The noise comes from this client&apos;s repeat shots (%1 degrees of freedom), filled up from the other repeat shots in the book and the documented default.</source>
        <translation>El ruido sale de las tomas repetidas de esta clienta (%1 grados de libertad), completado con las demás tomas repetidas del libro y el valor documentado.</translation>
    </message>
    <message>
        <source>The noise comes from this client&apos;s repeat shots (%1 degrees of freedom) and the documented default.</source>
        <translation>El ruido sale de las tomas repetidas de esta clienta (%1 grados de libertad) y del valor documentado.</translation>
    </message>
    <message>
        <source>This client has no repeat shots of this view; the noise comes from the other repeat shots in the book.</source>
        <translation>Esta clienta no tiene tomas repetidas de esta vista; el ruido sale de las demás tomas repetidas del libro.</translation>
    </message>
    <message>
        <source>This client has no repeat shots of this view; the noise comes from the other repeat shots in the book and the documented default.</source>
        <translation>Esta clienta no tiene tomas repetidas de esta vista; el ruido sale de las demás tomas repetidas del libro y del valor documentado.</translation>
    </message>
    <message>
        <source>This client has no repeat shots of this view; the noise comes from the documented default.</source>
        <translation>Esta clienta no tiene tomas repetidas de esta vista; el ruido sale del valor documentado.</translation>
    </message>
    <message>
        <source>To it comes what repeat shots cannot show, light and position that differ from one visit to the next: a standard deviation of %1.</source>
        <translation>A ello se suma lo que las tomas repetidas no muestran, luz y posición que cambian de una visita a otra: una desviación típica de %1.</translation>
    </message>
    <message>
        <source>%1 % of the value</source>
        <translation>%1 % del valor</translation>
    </message>
    <message>
        <source>At one scale, side by side; not laid over each other.</source>
        <translation>A la misma escala, una al lado de la otra; no superpuestas.</translation>
    </message>
    <message>
        <source>Laid over each other by the edge lines: where the edge itself has moved, it does not show.</source>
        <translation>Superpuestas por las líneas del contorno: donde el propio contorno se ha movido, no se ve.</translation>
    </message>
    <message>
        <source>Laid over each other by %1.</source>
        <translation>Superpuestas por %1.</translation>
    </message>
    <message>
        <source>Laid over each other by %1, to about %2 mm.</source>
        <translation>Superpuestas por %1, con unos %2 mm de margen.</translation>
    </message>
    <message>
        <source>the skin beside the edge line</source>
        <translation>la piel junto a la línea del contorno</translation>
    </message>
    <message>
        <source>the anchors</source>
        <translation>los puntos de anclaje</translation>
    </message>
    <message>
        <source>Neither an edge line nor the same anchors are marked in both photos.</source>
        <translation>En las dos fotos no está marcada la línea del contorno ni los mismos puntos de anclaje.</translation>
    </message>
    <message>
        <source>They are two sides of the head.</source>
        <translation>Son dos lados de la cabeza.</translation>
    </message>
    <message>
        <source>Without the gauge card in both photos the skin cannot be laid over itself.</source>
        <translation>Sin la tarjeta de medida en las dos fotos no se puede superponer la piel.</translation>
    </message>
    <message>
        <source>The anchors of both photos do not lie alike: they differ by %1 mm.</source>
        <translation>Los puntos de anclaje de las dos fotos no coinciden: difieren %1 mm.</translation>
    </message>
    <message>
        <source>Not to scale: there is no gauge card in one of the photos.</source>
        <translation>Sin escala: en una de las fotos no hay tarjeta de medida.</translation>
    </message>
    <message>
        <source>The right side is mirrored and laid by the edge lines.</source>
        <translation>El lado derecho está reflejado y colocado por las líneas del contorno.</translation>
    </message>
    <message>
        <source>Colours as the cameras wrote them: the light could not be matched.</source>
        <translation>Colores tal como los escribieron las cámaras: no se pudo igualar la luz.</translation>
    </message>
    <message>
        <source>Scale from two points: tilt is not known.</source>
        <translation>Escala de dos puntos: no se conoce la inclinación.</translation>
    </message>
    <message>
        <source>Taken over by the skin beside the line</source>
        <translation>Pasadas por la piel junto a la línea</translation>
    </message>
    <message>
        <source>Taken over by the anchors</source>
        <translation>Pasadas por los puntos de anclaje</translation>
    </message>
    <message>
        <source>Taken over through the card</source>
        <translation>Pasadas por la tarjeta</translation>
    </message>
    <message>
        <source>Taken over by the skin beside the line, to about %1 mm</source>
        <translation>Pasadas por la piel junto a la línea, con unos %1 mm de margen</translation>
    </message>
    <message>
        <source>Taken over by the anchors, to about %1 mm</source>
        <translation>Pasadas por los puntos de anclaje, con unos %1 mm de margen</translation>
    </message>
    <message>
        <source>Taken over through the card, to about %1 mm</source>
        <translation>Pasadas por la tarjeta, con unos %1 mm de margen</translation>
    </message>
    <message>
        <source>The last edge line would lie outside this photo.</source>
        <translation>La última línea del contorno quedaría fuera de esta foto.</translation>
    </message>
    <message>
        <source>Nothing was carried over.</source>
        <translation>No se pasó nada.</translation>
    </message>
    <message>
        <source>Photograph the same place as at the last visit, or draw the line anew.</source>
        <translation>Fotografíe el mismo lugar que en la última visita, o dibuje la línea de nuevo.</translation>
    </message>
    <message>
        <source>One colour sample was left out: the photo shows something else there.</source>
        <translation>Se dejó fuera una muestra de color: ahí la foto muestra otra cosa.</translation>
    </message>
    <message>
        <source>%1 colour samples were left out: the photo shows something else there.</source>
        <translation>Se dejaron fuera %1 muestras de color: ahí la foto muestra otra cosa.</translation>
    </message>
    <message>
        <source>The card was moved between the shots, so the skin was used.</source>
        <translation>La tarjeta se movió entre las tomas, así que se usó la piel.</translation>
    </message>
    <message>
        <source>Marks can only be carried between two photos that both show the gauge card.</source>
        <translation>Las marcas solo se pueden pasar entre dos fotos que muestren la tarjeta de medida.</translation>
    </message>
    <message>
        <source>Draw the marks on this photo by hand.</source>
        <translation>Dibuje las marcas de esta foto a mano.</translation>
    </message>
    <message>
        <source>Check first: %1 If so: %2</source>
        <translation>Compruebe primero: %1 Si es así: %2</translation>
    </message>
    <message>
        <source>New growth since the last straightening or perm reaches what a retouch needs, and two months have passed.</source>
        <translation>El crecimiento desde el último alisado o permanente llega a lo que pide un retoque, y han pasado dos meses.</translation>
    </message>
    <message>
        <source>Ends are trimmed every two to three months.</source>
        <translation>Las puntas se cortan cada dos o tres meses.</translation>
    </message>
    <message>
        <source>Straightened, lightened or weak hair is trimmed every six to eight weeks.</source>
        <translation>El cabello alisado, decolorado o débil se corta cada seis u ocho semanas.</translation>
    </message>
    <message>
        <source>Natural hair that sees no heat is trimmed every three to four months.</source>
        <translation>El cabello natural que no recibe calor se corta cada tres o cuatro meses.</translation>
    </message>
    <message>
        <source>The first centimetre of the edges has then grown anew.</source>
        <translation>Para entonces ha crecido de nuevo el primer centímetro del contorno.</translation>
    </message>
    <message>
        <source>The patch test is put on at least 48 hours before the dye, and anew for every use.</source>
        <translation>La prueba de alergia se pone al menos 48 horas antes del tinte, y de nuevo para cada uso.</translation>
    </message>
    <message>
        <source>There is no hair that it may be put on.</source>
        <translation>No hay cabello sobre el que se pueda aplicar.</translation>
    </message>
    <message>
        <source>Name the head sections and the minutes that each takes to apply.</source>
        <translation>Indique las secciones de la cabeza y los minutos que lleva aplicar cada una.</translation>
    </message>
    <message>
        <source>Do a strand test and enter its minutes first.</source>
        <translation>Haga antes una prueba de mechón y anote sus minutos.</translation>
    </message>
    <message>
        <source>Enter the longest time that the maker&apos;s directions allow.</source>
        <translation>Anote el tiempo máximo que permiten las instrucciones del fabricante.</translation>
    </message>
    <message>
        <source>A %1 has no application timeline.</source>
        <translation>Para %1 no hay tiempos de aplicación.</translation>
    </message>
    <message>
        <source>A stop speaks against this service, so no order of work is given.</source>
        <translation>Un alto habla en contra de este servicio, así que no se da un orden de trabajo.</translation>
    </message>
    <message>
        <source>A milder strength, if its strand test takes %1 to %2 % longer than this one and its maximum is no shorter; test again first.</source>
        <translation>Una fuerza más suave, si su prueba de mechón tarda entre un %1 y un %2 % más que esta y su máximo no es más corto; haga antes otra prueba.</translation>
    </message>
    <message>
        <source>With %1 people applying it works.</source>
        <translation>Con %1 personas aplicando, es posible.</translation>
    </message>
    <message>
        <source>With the sections halved, in %1 rounds.</source>
        <translation>Con las secciones por mitades, en %1 tandas.</translation>
    </message>
    <message>
        <source>In %1 rounds: apply and rinse some sections before the next ones are begun.</source>
        <translation>En %1 tandas: aplique y aclare unas secciones antes de empezar las siguientes.</translation>
    </message>
    <message>
        <source>Measured on her and weighed against what is published: %1.</source>
        <translation>Medido en ella y sopesado con lo publicado: %1.</translation>
    </message>
    <message>
        <source>Published, over all groups of hair, since hers is not recorded: %1.</source>
        <translation>Publicado, sobre todos los grupos de cabello, porque el suyo no consta: %1.</translation>
    </message>
    <message>
        <source>Published, for her group of hair: %1.</source>
        <translation>Publicado, para su grupo de cabello: %1.</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation>No se cambió nada.</translation>
    </message>
    <message>
        <source>Nothing in the book was changed.</source>
        <translation>No se cambió nada en el libro.</translation>
    </message>
    <message>
        <source>The work was stopped.</source>
        <translation>El trabajo se detuvo.</translation>
    </message>
    <message>
        <source>Another program or window is writing in the book.</source>
        <translation>Otro programa u otra ventana está escribiendo en el libro.</translation>
    </message>
    <message>
        <source>Try again in a moment.</source>
        <translation>Inténtelo de nuevo en un momento.</translation>
    </message>
    <message>
        <source>The book can be read but not written.</source>
        <translation>El libro se puede leer, pero no escribir.</translation>
    </message>
    <message>
        <source>Take away the write protection of the file and its folder, or copy the book to another place.</source>
        <translation>Quite la protección contra escritura del archivo y de su carpeta, o copie el libro en otro lugar.</translation>
    </message>
    <message>
        <source>The disk could not be read or written (%1).</source>
        <translation>No se pudo leer o escribir en el disco (%1).</translation>
    </message>
    <message>
        <source>Check the disk, its connection and the free space.</source>
        <translation>Revise el disco, su conexión y el espacio libre.</translation>
    </message>
    <message>
        <source>There is no room left for the book.</source>
        <translation>No queda espacio para el libro.</translation>
    </message>
    <message>
        <source>Make room on the disk and try again.</source>
        <translation>Libere espacio en el disco e inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>The book could not be opened (%1).</source>
        <translation>No se pudo abrir el libro (%1).</translation>
    </message>
    <message>
        <source>Check that the file and its folder may be read and written.</source>
        <translation>Compruebe que el archivo y su carpeta se pueden leer y escribir.</translation>
    </message>
    <message>
        <source>The book&apos;s file is damaged (%1).</source>
        <translation>El archivo del libro está dañado (%1).</translation>
    </message>
    <message>
        <source>Keep the file as it is and bring back the latest backup.</source>
        <translation>Deje el archivo como está y recupere la última copia.</translation>
    </message>
    <message>
        <source>The work broke off unexpectedly (%1).</source>
        <translation>El trabajo se interrumpió de forma inesperada (%1).</translation>
    </message>
    <message>
        <source>What had been stored before stays; nothing half done was kept.</source>
        <translation>Lo guardado antes permanece; no se guardó nada a medias.</translation>
    </message>
    <message>
        <source>Try again; if it happens again, check the book and report the words in brackets.</source>
        <translation>Inténtelo de nuevo; si vuelve a ocurrir, revise el libro y avise con las palabras entre paréntesis.</translation>
    </message>
    <message>
        <source>The file %1 could not be written: %2.</source>
        <translation>No se pudo escribir el archivo %1: %2.</translation>
    </message>
    <message>
        <source>What stood there before is unchanged.</source>
        <translation>Lo que había antes sigue igual.</translation>
    </message>
    <message>
        <source>Check that the folder exists, may be written to and has room.</source>
        <translation>Compruebe que la carpeta existe, que se puede escribir en ella y que hay espacio.</translation>
    </message>
    <message>
        <source>There already is a file %1.</source>
        <translation>Ya existe un archivo %1.</translation>
    </message>
    <message>
        <source>It was left as it is.</source>
        <translation>Se dejó como está.</translation>
    </message>
    <message>
        <source>Choose another name for the backup.</source>
        <translation>Elija otro nombre para la copia.</translation>
    </message>
    <message>
        <source>A change to the book is not finished yet.</source>
        <translation>Un cambio en el libro aún no ha terminado.</translation>
    </message>
    <message>
        <source>Make the backup afterwards.</source>
        <translation>Haga la copia después.</translation>
    </message>
    <message>
        <source>The book itself was not changed, and no backup was left half-written.</source>
        <translation>El libro no se cambió y no quedó ninguna copia a medias.</translation>
    </message>
    <message>
        <source>There is no folder %1.</source>
        <translation>No existe la carpeta %1.</translation>
    </message>
    <message>
        <source>Choose another place for the backup.</source>
        <translation>Elija otro lugar para la copia.</translation>
    </message>
    <message>
        <source>The backup %1 could not be made.</source>
        <translation>No se pudo hacer la copia %1.</translation>
    </message>
    <message>
        <source>Choose another backup.</source>
        <translation>Elija otra copia.</translation>
    </message>
    <message>
        <source>Nothing was replaced.</source>
        <translation>No se sustituyó nada.</translation>
    </message>
    <message>
        <source>The book could not be brought back from %1.</source>
        <translation>No se pudo recuperar el libro desde %1.</translation>
    </message>
    <message>
        <source>%1 is open in another window or program.</source>
        <translation>%1 está abierto en otra ventana o programa.</translation>
    </message>
    <message>
        <source>Close it there and try again.</source>
        <translation>Ciérrelo allí e inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>%1 is open, or was not closed properly.</source>
        <translation>%1 está abierto o no se cerró bien.</translation>
    </message>
    <message>
        <source>Open it in Kempt and make a backup of it, then bring back that one.</source>
        <translation>Ábralo en Kempt, haga una copia y recupere esa.</translation>
    </message>
    <message>
        <source>%1 could not be written.</source>
        <translation>No se pudo escribir %1.</translation>
    </message>
    <message>
        <source>Check that you may write in that folder.</source>
        <translation>Compruebe que puede escribir en esa carpeta.</translation>
    </message>
    <message>
        <source>The book&apos;s file is damaged: %1.</source>
        <translation>El archivo del libro está dañado: %1.</translation>
    </message>
    <message>
        <source>front hairline</source>
        <translation>línea frontal</translation>
    </message>
    <message>
        <source>left temple</source>
        <translation>sien izquierda</translation>
    </message>
    <message>
        <source>right temple</source>
        <translation>sien derecha</translation>
    </message>
    <message>
        <source>crown</source>
        <translation>coronilla</translation>
    </message>
    <message>
        <source>nape</source>
        <translation>nuca</translation>
    </message>
    <message>
        <source>lengths</source>
        <translation>largos</translation>
    </message>
    <message>
        <source>ends</source>
        <translation>puntas</translation>
    </message>
    <message>
        <source>roots</source>
        <translation>raíces</translation>
    </message>
    <message>
        <source>mid-shaft</source>
        <translation>medios</translation>
    </message>
    <message>
        <source>root</source>
        <translation>raíz</translation>
    </message>
    <message>
        <source>mid</source>
        <translation>medios</translation>
    </message>
    <message>
        <source>end</source>
        <translation>punta</translation>
    </message>
    <message>
        <source>hydroxide straightener</source>
        <translation>alisador de hidróxido</translation>
    </message>
    <message>
        <source>hydroxide straightener with lye</source>
        <translation>alisador de hidróxido con sosa</translation>
    </message>
    <message>
        <source>hydroxide straightener without lye</source>
        <translation>alisador de hidróxido sin sosa</translation>
    </message>
    <message>
        <source>thioglycolate straightener</source>
        <translation>alisador de tioglicolato</translation>
    </message>
    <message>
        <source>thioglycolate perm</source>
        <translation>permanente de tioglicolato</translation>
    </message>
    <message>
        <source>bond-building treatment</source>
        <translation>tratamiento reconstructor de enlaces</translation>
    </message>
    <message>
        <source>protein treatment</source>
        <translation>tratamiento de proteína</translation>
    </message>
    <message>
        <source>moisture treatment</source>
        <translation>tratamiento hidratante</translation>
    </message>
    <message>
        <source>semi-permanent colour</source>
        <translation>color semipermanente</translation>
    </message>
    <message>
        <source>demi-permanent colour</source>
        <translation>color demipermanente</translation>
    </message>
    <message>
        <source>gloss</source>
        <translation>baño de brillo</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>corte</translation>
    </message>
    <message>
        <source>protective style</source>
        <translation>peinado protector</translation>
    </message>
    <message>
        <source>metallic dye</source>
        <translation>tinte metálico</translation>
    </message>
    <message>
        <source>smoothing treatment</source>
        <translation>tratamiento de alisado con plancha</translation>
    </message>
    <message>
        <source>mild</source>
        <translation>suave</translation>
    </message>
    <message>
        <source>regular</source>
        <translation>normal</translation>
    </message>
    <message>
        <source>super</source>
        <translation>fuerte</translation>
    </message>
    <message>
        <source>passed</source>
        <translation>superada</translation>
    </message>
    <message>
        <source>failed</source>
        <translation>no superada</translation>
    </message>
    <message>
        <source>fine</source>
        <translation>fino</translation>
    </message>
    <message>
        <source>medium</source>
        <translation>medio</translation>
    </message>
    <message>
        <source>coarse</source>
        <translation>grueso</translation>
    </message>
    <message>
        <source>flat iron</source>
        <translation>plancha</translation>
    </message>
    <message>
        <source>curling iron</source>
        <translation>tenacilla</translation>
    </message>
    <message>
        <source>hot comb</source>
        <translation>peine caliente</translation>
    </message>
    <message>
        <source>hot rollers</source>
        <translation>rulos calientes</translation>
    </message>
    <message>
        <source>dryer</source>
        <translation>secador</translation>
    </message>
    <message>
        <source>hooded dryer</source>
        <translation>secador de casco</translation>
    </message>
    <message>
        <source>african</source>
        <translation>africano</translation>
    </message>
    <message>
        <source>asian</source>
        <translation>asiático</translation>
    </message>
    <message>
        <source>caucasian</source>
        <translation>caucásico</translation>
    </message>
    <message>
        <source>edges</source>
        <translation>contornos</translation>
    </message>
    <message>
        <source>breakage</source>
        <translation>rotura</translation>
    </message>
    <message>
        <source>porosity</source>
        <translation>porosidad</translation>
    </message>
    <message>
        <source>elasticity</source>
        <translation>elasticidad</translation>
    </message>
    <message>
        <source>shine</source>
        <translation>brillo</translation>
    </message>
    <message>
        <source>scalp</source>
        <translation>cuero cabelludo</translation>
    </message>
    <message>
        <source>scalp bare along most of the line, no hairs or only a few single ones</source>
        <translation>cuero cabelludo descubierto en casi toda la línea, sin cabellos o solo unos pocos sueltos</translation>
    </message>
    <message>
        <source>short or fine single hairs, scalp seen between nearly all of them</source>
        <translation>cabellos sueltos, cortos o finos; se ve el cuero cabelludo entre casi todos</translation>
    </message>
    <message>
        <source>hairs in tufts with bare gaps wider than a fingertip between them</source>
        <translation>cabellos en mechones con huecos más anchos que la yema de un dedo</translation>
    </message>
    <message>
        <source>one continuous line, scalp still shows through it at arm&apos;s length</source>
        <translation>una línea continua, el cuero cabelludo aún se trasluce a un brazo de distancia</translation>
    </message>
    <message>
        <source>full line, scalp cannot be seen through it at arm&apos;s length</source>
        <translation>línea llena, a un brazo de distancia no se ve el cuero cabelludo</translation>
    </message>
    <message>
        <source>pieces come off at a light touch, broken patches or a blunt step in the hair</source>
        <translation>se desprenden trozos al menor roce, zonas rotas o un escalón brusco en el cabello</translation>
    </message>
    <message>
        <source>many short broken pieces on cape and comb after one comb-through</source>
        <translation>muchos trozos cortos y rotos en la capa y el peine tras una pasada</translation>
    </message>
    <message>
        <source>some broken pieces after a comb-through, ragged lengths in one zone</source>
        <translation>algunos trozos rotos tras una pasada, largos desiguales en una zona</translation>
    </message>
    <message>
        <source>a few broken pieces, only when the hair is pulled or at the last centimetres</source>
        <translation>unos pocos trozos rotos, solo al estirar o en los últimos centímetros</translation>
    </message>
    <message>
        <source>shed hairs with their bulb only, no broken pieces</source>
        <translation>solo cabellos caídos con su bulbo, ningún trozo roto</translation>
    </message>
    <message>
        <source>drinks water at once and stays wet long, feels spongy or gummy</source>
        <translation>absorbe el agua al instante y tarda en secar, tacto esponjoso o gomoso</translation>
    </message>
    <message>
        <source>wets at once and feels rough along most of its length</source>
        <translation>se moja al instante y está áspero en casi todo el largo</translation>
    </message>
    <message>
        <source>wets quickly in mid-shaft and ends, roots normal</source>
        <translation>se moja deprisa en medios y puntas, raíces normales</translation>
    </message>
    <message>
        <source>wets evenly, only the last centimetres wet faster</source>
        <translation>se moja por igual, solo los últimos centímetros más deprisa</translation>
    </message>
    <message>
        <source>wets evenly from root to end and feels smooth both ways</source>
        <translation>se moja por igual de raíz a punta y es suave en ambos sentidos</translation>
    </message>
    <message>
        <source>wet strand stretches like gum and does not return, or snaps at once</source>
        <translation>mojada, la hebra se estira como goma y no vuelve, o se parte al momento</translation>
    </message>
    <message>
        <source>wet strand stretches a little, then breaks</source>
        <translation>mojada, la hebra se estira un poco y se rompe</translation>
    </message>
    <message>
        <source>wet strand stretches and returns only in part</source>
        <translation>mojada, la hebra se estira y vuelve solo en parte</translation>
    </message>
    <message>
        <source>wet strand stretches and returns slowly</source>
        <translation>mojada, la hebra se estira y vuelve despacio</translation>
    </message>
    <message>
        <source>wet strand stretches by about a third or more and springs back</source>
        <translation>mojada, la hebra se estira un tercio o más y recupera su forma</translation>
    </message>
    <message>
        <source>dull all over, no light band in any position</source>
        <translation>apagado por completo, sin banda de luz en ninguna posición</translation>
    </message>
    <message>
        <source>scattered sparks, no band</source>
        <translation>destellos sueltos, sin banda</translation>
    </message>
    <message>
        <source>a broken light band on part of the head</source>
        <translation>una banda de luz interrumpida en parte de la cabeza</translation>
    </message>
    <message>
        <source>a continuous light band with soft edges</source>
        <translation>una banda de luz continua de bordes suaves</translation>
    </message>
    <message>
        <source>a narrow, bright and continuous light band</source>
        <translation>una banda de luz estrecha, viva y continua</translation>
    </message>
    <message>
        <source>open, weeping, crusted or painful places: no service, advise a doctor</source>
        <translation>zonas abiertas, que supuran, con costra o dolorosas: ningún servicio, aconseje ir al médico</translation>
    </message>
    <message>
        <source>redness, burning, pimples or thick scale in several places</source>
        <translation>enrojecimiento, ardor, granos o escamas gruesas en varios sitios</translation>
    </message>
    <message>
        <source>itching, flakes or one red place</source>
        <translation>picor, descamación o un punto rojo</translation>
    </message>
    <message>
        <source>slightly dry or tight, no redness</source>
        <translation>algo seco o tirante, sin enrojecimiento</translation>
    </message>
    <message>
        <source>calm, clean and supple, nothing to see or feel</source>
        <translation>tranquilo, limpio y flexible, nada que ver ni que notar</translation>
    </message>
    <message>
        <source>edge coverage</source>
        <translation>cobertura del contorno</translation>
    </message>
    <message>
        <source>strands at the edge</source>
        <translation>hebras en el contorno</translation>
    </message>
    <message>
        <source>fill depth</source>
        <translation>profundidad de relleno</translation>
    </message>
    <message>
        <source>bare length</source>
        <translation>largo descubierto</translation>
    </message>
    <message>
        <source>hair length per area</source>
        <translation>largo de cabello por superficie</translation>
    </message>
    <message>
        <source>shine contrast</source>
        <translation>contraste del brillo</translation>
    </message>
    <message>
        <source>width of the highlight</source>
        <translation>ancho del brillo</translation>
    </message>
    <message>
        <source>luster</source>
        <translation>lustre</translation>
    </message>
    <message>
        <source>alignment</source>
        <translation>alineación</translation>
    </message>
    <message>
        <source>tone spread</source>
        <translation>diferencia de tono</translation>
    </message>
    <message>
        <source>level</source>
        <translation>altura de tono</translation>
    </message>
    <message>
        <source>unevenness of the hem</source>
        <translation>desigualdad del borde</translation>
    </message>
    <message>
        <source>see-through ends</source>
        <translation>puntas transparentes</translation>
    </message>
    <message>
        <source>flyaway hair</source>
        <translation>cabello suelto al aire</translation>
    </message>
    <message>
        <source>strands combed out</source>
        <translation>hebras peinadas</translation>
    </message>
    <message>
        <source>length of the combed-out strands</source>
        <translation>largo de las hebras peinadas</translation>
    </message>
    <message>
        <source>share of short strands</source>
        <translation>parte de hebras cortas</translation>
    </message>
    <message>
        <source>curve diameter</source>
        <translation>diámetro del rizo</translation>
    </message>
    <message>
        <source>wave ratio</source>
        <translation>relación de onda</translation>
    </message>
    <message>
        <source>strand length</source>
        <translation>largo de la hebra</translation>
    </message>
    <message>
        <source>Edge coverage</source>
        <translation>Cobertura del contorno</translation>
    </message>
    <message>
        <source>Strands at the edge</source>
        <translation>Hebras en el contorno</translation>
    </message>
    <message>
        <source>Fill depth</source>
        <translation>Profundidad de relleno</translation>
    </message>
    <message>
        <source>Bare length</source>
        <translation>Largo descubierto</translation>
    </message>
    <message>
        <source>Hair length per area</source>
        <translation>Largo de cabello por superficie</translation>
    </message>
    <message>
        <source>Difference between the temples</source>
        <translation>Diferencia entre las sienes</translation>
    </message>
    <message>
        <source>Shine contrast</source>
        <translation>Contraste del brillo</translation>
    </message>
    <message>
        <source>Shine width</source>
        <translation>Ancho del brillo</translation>
    </message>
    <message>
        <source>Width of the highlight</source>
        <translation>Ancho del brillo</translation>
    </message>
    <message>
        <source>Luster</source>
        <translation>Lustre</translation>
    </message>
    <message>
        <source>Alignment</source>
        <translation>Alineación</translation>
    </message>
    <message>
        <source>Tone spread</source>
        <translation>Diferencia de tono</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Altura de tono</translation>
    </message>
    <message>
        <source>Unevenness of the hem</source>
        <translation>Desigualdad del borde</translation>
    </message>
    <message>
        <source>See-through ends</source>
        <translation>Puntas transparentes</translation>
    </message>
    <message>
        <source>See-through share of the ends</source>
        <translation>Parte transparente de las puntas</translation>
    </message>
    <message>
        <source>Flyaway share</source>
        <translation>Parte de cabello suelto</translation>
    </message>
    <message>
        <source>Flyaway hair</source>
        <translation>Cabello suelto al aire</translation>
    </message>
    <message>
        <source>Share of short strands</source>
        <translation>Parte de hebras cortas</translation>
    </message>
    <message>
        <source>Strands combed out</source>
        <translation>Hebras peinadas</translation>
    </message>
    <message>
        <source>Length of the combed-out strands</source>
        <translation>Largo de las hebras peinadas</translation>
    </message>
    <message>
        <source>Curve diameter</source>
        <translation>Diámetro del rizo</translation>
    </message>
    <message>
        <source>Wave ratio</source>
        <translation>Relación de onda</translation>
    </message>
    <message>
        <source>Strand length</source>
        <translation>Largo de la hebra</translation>
    </message>
    <message>
        <source>Share of the first 10 mm behind the edge line that is hidden by hair.</source>
        <translation>Parte de los primeros 10 mm detrás de la línea del contorno que queda cubierta por cabello.</translation>
    </message>
    <message>
        <source>Strands seen crossing a line 5 mm behind the edge, for each centimetre of that line.</source>
        <translation>Hebras que se ven cruzar una línea a 5 mm del contorno, por cada centímetro de esa línea.</translation>
    </message>
    <message>
        <source>Length of the edge line behind which less than a fifth of the first 10 mm is covered.</source>
        <translation>Largo de la línea detrás de la cual está cubierta menos de una quinta parte de los primeros 10 mm.</translation>
    </message>
    <message>
        <source>Length of the strands that can be seen on each square millimetre of the first 10 mm.</source>
        <translation>Largo de las hebras que se ven en cada milímetro cuadrado de los primeros 10 mm.</translation>
    </message>
    <message>
        <source>Share of the light along the hair that stands above its dull level: 0 is dull, 1 a mirror.</source>
        <translation>Parte de la luz a lo largo del cabello que supera su nivel apagado: 0 es mate, 1 un espejo.</translation>
    </message>
    <message>
        <source>Width of the light band along the hair at half its height; smooth hair has a narrow one.</source>
        <translation>Ancho de la banda de luz a media altura; el cabello liso la tiene estrecha.</translation>
    </message>
    <message>
        <source>All light over dull light, for each millimetre of the light band&apos;s width.</source>
        <translation>Toda la luz entre la luz apagada, por cada milímetro de ancho de la banda.</translation>
    </message>
    <message>
        <source>How much the fibres run one way: 0 in all directions, 1 all alike.</source>
        <translation>Hasta qué punto las fibras van en un sentido: 0 en todos, 1 todas igual.</translation>
    </message>
    <message>
        <source>Largest colour difference (CIEDE2000) between root, mid-shaft and ends.</source>
        <translation>Mayor diferencia de color (CIEDE2000) entre raíz, medios y puntas.</translation>
    </message>
    <message>
        <source>Level of the mid-shaft, 1 black to 10 lightest blonde, on a scale of our own calibration.</source>
        <translation>Altura de tono de los medios, de 1 negro a 10 rubio clarísimo, en una escala calibrada por nosotros.</translation>
    </message>
    <message>
        <source>How far the ends scatter about a smooth hem.</source>
        <translation>Cuánto se apartan las puntas de un borde regular.</translation>
    </message>
    <message>
        <source>Share of the last 20 mm through which the sheet can be seen.</source>
        <translation>Parte de los últimos 20 mm a través de la cual se ve la hoja.</translation>
    </message>
    <message>
        <source>Share of the hair that stands outside the smooth outline.</source>
        <translation>Parte del cabello que queda fuera del contorno regular.</translation>
    </message>
    <message>
        <source>Number of strands on the gauge sheet after a timed comb-through.</source>
        <translation>Número de hebras en la hoja de medida tras un peinado cronometrado.</translation>
    </message>
    <message>
        <source>Half of the strands on the sheet are longer than this.</source>
        <translation>La mitad de las hebras de la hoja son más largas.</translation>
    </message>
    <message>
        <source>Share of the strands on the sheet that are shorter than 50 mm: broken rather than shed.</source>
        <translation>Parte de las hebras de la hoja de menos de 50 mm: rotas más que caídas.</translation>
    </message>
    <message>
        <source>Diameter of the circle that bends like the strand.</source>
        <translation>Diámetro del círculo que se curva como la hebra.</translation>
    </message>
    <message>
        <source>Length along the strand over the distance between its ends: 1 is straight.</source>
        <translation>Largo de la hebra entre la distancia de sus extremos: 1 es recta.</translation>
    </message>
    <message>
        <source>Length along the strand as it lies on the sheet.</source>
        <translation>Largo de la hebra tal como está sobre la hoja.</translation>
    </message>
    <message>
        <source>improved</source>
        <translation>mejor</translation>
    </message>
    <message>
        <source>worse</source>
        <translation>peor</translation>
    </message>
    <message>
        <source>no detectable change</source>
        <translation>sin cambio apreciable</translation>
    </message>
    <message>
        <source>not comparable</source>
        <translation>no comparable</translation>
    </message>
    <message>
        <source>good</source>
        <translation>buena</translation>
    </message>
    <message>
        <source>usable</source>
        <translation>utilizable</translation>
    </message>
    <message>
        <source>refused</source>
        <translation>rechazada</translation>
    </message>
    <message>
        <source>stop</source>
        <translation>alto</translation>
    </message>
    <message>
        <source>caution</source>
        <translation>precaución</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>straight</source>
        <translation>liso</translation>
    </message>
    <message>
        <source>slight bend</source>
        <translation>onda leve</translation>
    </message>
    <message>
        <source>loose curl</source>
        <translation>rizo abierto</translation>
    </message>
    <message>
        <source>medium curl</source>
        <translation>rizo medio</translation>
    </message>
    <message>
        <source>tight curl</source>
        <translation>rizo cerrado</translation>
    </message>
    <message>
        <source>very tight curl</source>
        <translation>rizo muy cerrado</translation>
    </message>
    <message>
        <source>retouch</source>
        <translation>retoque</translation>
    </message>
    <message>
        <source>trim</source>
        <translation>corte de puntas</translation>
    </message>
    <message>
        <source>photographs</source>
        <translation>fotografías</translation>
    </message>
    <message>
        <source>patch test</source>
        <translation>prueba de alergia</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>práctica común, sin fuente</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>práctica común</translation>
    </message>
    <message>
        <source>measured on this client</source>
        <translation>medido en esta clienta</translation>
    </message>
    <message>
        <source>points</source>
        <translation>puntos</translation>
    </message>
    <message>
        <source>point</source>
        <translation>punto</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>desconocido</translation>
    </message>
    <message>
        <source>two</source>
        <translation>dos</translation>
    </message>
    <message>
        <source>three</source>
        <translation>tres</translation>
    </message>
    <message>
        <source>wet</source>
        <translation>mojado</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>seco</translation>
    </message>
    <message>
        <source>styled</source>
        <translation>peinado</translation>
    </message>
    <message>
        <source>unstyled</source>
        <translation>sin peinar</translation>
    </message>
    <message>
        <source>with product</source>
        <translation>con producto</translation>
    </message>
    <message>
        <source>without product</source>
        <translation>sin producto</translation>
    </message>
    <message>
        <source>per cm</source>
        <translation>por cm</translation>
    </message>
    <message>
        <source>per mm</source>
        <translation>por mm</translation>
    </message>
    <message>
        <source>per in</source>
        <translation>por pulgada</translation>
    </message>
    <message>
        <source>Hydroxide straightening has already taken much of the bonds that lightening attacks: relaxed hair holds about half or less of the cystine of natural hair.</source>
        <translation>El alisado con hidróxido ya quitó gran parte de los enlaces que ataca la decoloración: el cabello alisado tiene la mitad o menos de la cistina del natural.</translation>
    </message>
    <message>
        <source>A treatment has caused a rash, itch, swelling or burning before.</source>
        <translation>Un tratamiento ya causó sarpullido, picor, hinchazón o ardor.</translation>
    </message>
    <message>
        <source>Not the same product again: compare the labels, try another on a small place of skin first, and suggest seeing a doctor when it was more than a passing itch.</source>
        <translation>No el mismo producto otra vez: compare las etiquetas, pruebe antes otro en un poco de piel, y sugiera ir al médico si fue más que un picor pasajero.</translation>
    </message>
    <message>
        <source>Uneven earlier colour on freshly straightened fine hair: permanent colour lifts with peroxide and alkali, which this hair does not bear now, and takes darker where it is porous; a semi-permanent one only stains over the differences and washes out of porous hair first. A demi-permanent colour evens out tone on tone, without lift and with little peroxide.</source>
        <translation>Color anterior desigual en cabello fino recién alisado: el color permanente aclara con peróxido y álcali, que este cabello no soporta ahora, y queda más oscuro donde es poroso; uno semipermanente solo mancha por encima de las diferencias y se va antes del cabello poroso. Un color demipermanente iguala tono sobre tono, sin aclarar y con poco peróxido.</translation>
    </message>
    <message>
        <source>Even out with demi-permanent colour, porous parts last, after strand and patch test; permanent colour two weeks later or more.</source>
        <translation>Iguale con color demipermanente, las partes porosas al final, tras prueba de mechón y de alergia; el color permanente, dos semanas después o más.</translation>
    </message>
    <message>
        <source>Straightening and a pulling style on one day: traction on relaxed hair went with 3.5 times the odds of hair loss.</source>
        <translation>Alisado y un peinado que tira el mismo día: la tracción en cabello alisado iba con 3,5 veces más probabilidad de caída.</translation>
    </message>
    <message>
        <source>The 60-second comb count is above anything found in 60 men aged 20 to 60 without hair loss (0 to 78); there is no published norm for women or for curled hair.</source>
        <translation>El recuento de 60 segundos supera todo lo hallado en 60 hombres de 20 a 60 años sin caída (0 a 78); no hay norma publicada para mujeres ni para cabello rizado.</translation>
    </message>
    <message>
        <source>permanent colour or lightening</source>
        <translation>color permanente o decoloración</translation>
    </message>
    <message>
        <source>a metallic dye</source>
        <translation>un tinte metálico</translation>
    </message>
    <message>
        <source>a bond-building treatment</source>
        <translation>un tratamiento reconstructor de enlaces</translation>
    </message>
    <message>
        <source>a treatment</source>
        <translation>un tratamiento</translation>
    </message>
    <message>
        <source>Ask about any rash, itch, swelling or burning after a treatment.</source>
        <translation>Pregunte por sarpullido, picor o hinchazón tras un tinte.</translation>
    </message>
    <message>
        <source>Distance behind the edge line at which the hair reaches half of its fullness at 15 to 20 mm.</source>
        <translation>Distancia detrás de la línea del contorno a la que el cabello alcanza la mitad de su densidad a 15-20 mm.</translation>
    </message>
    <message>
        <source>30 mm along the strand over the straight distance that they span: 1 is straight.</source>
        <translation>30 mm a lo largo de la hebra entre la distancia recta que abarcan: 1 es recta.</translation>
    </message>
    <message>
        <source>When it was told how far the record goes back was not kept.</source>
        <translation>No se guardó cuándo se dijo hasta dónde llega el historial.</translation>
    </message>
    <message>
        <source>Ask again whether every service is in it, those elsewhere and at home too.</source>
        <translation>Pregunte de nuevo si constan todos los servicios, también los hechos en otro sitio y en casa.</translation>
    </message>
    <message>
        <source>%1; the rest common practice, no source</source>
        <translation>%1; el resto, práctica común, sin fuente</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Alto</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Precaución</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>It was told on %1 how far the record goes back, too long ago to count.</source>
        <translation>Se dijo el %1 hasta dónde llega el historial, hace demasiado para que valga.</translation>
    </message>
    <message>
        <source>looking for the gauge card</source>
        <translation>buscando la tarjeta de medida</translation>
    </message>
    <message>
        <source>reading the photo</source>
        <translation>leyendo la foto</translation>
    </message>
    <message>
        <source>judging the photo</source>
        <translation>valorando la foto</translation>
    </message>
    <message>
        <source>photo is open</source>
        <translation>la foto está abierta</translation>
    </message>
    <message>
        <source>looking at the edge</source>
        <translation>mirando el contorno</translation>
    </message>
    <message>
        <source>laying the photos over each other</source>
        <translation>superponiendo las fotos</translation>
    </message>
    <message>
        <source>drawing the earlier photo</source>
        <translation>dibujando la foto anterior</translation>
    </message>
    <message>
        <source>drawing the later photo</source>
        <translation>dibujando la foto posterior</translation>
    </message>
    <message>
        <source>pictures are drawn</source>
        <translation>las imágenes están dibujadas</translation>
    </message>
    <message>
        <source>looking for strands</source>
        <translation>buscando hebras</translation>
    </message>
    <message>
        <source>following strands</source>
        <translation>siguiendo hebras</translation>
    </message>
    <message>
        <source>joining strands at crossings</source>
        <translation>uniendo hebras en los cruces</translation>
    </message>
    <message>
        <source>strands traced</source>
        <translation>hebras trazadas</translation>
    </message>
    <message>
        <source>looking at the paper</source>
        <translation>mirando el papel</translation>
    </message>
    <message>
        <source>telling hair from paper</source>
        <translation>distinguiendo cabello y papel</translation>
    </message>
    <message>
        <source>following the hem</source>
        <translation>siguiendo el borde</translation>
    </message>
    <message>
        <source>cutting out the ends</source>
        <translation>recortando las puntas</translation>
    </message>
    <message>
        <source>laying the hair flat</source>
        <translation>alisando el cabello</translation>
    </message>
    <message>
        <source>reading the light along the fibres</source>
        <translation>leyendo la luz a lo largo de las fibras</translation>
    </message>
    <message>
        <source>reading the highlight</source>
        <translation>leyendo el brillo</translation>
    </message>
    <message>
        <source>looking for lines of demarcation</source>
        <translation>buscando líneas de demarcación</translation>
    </message>
    <message>
        <source>copying the book</source>
        <translation>copiando el libro</translation>
    </message>
    <message>
        <source>the copy is complete</source>
        <translation>la copia está completa</translation>
    </message>
    <message>
        <source>reading services and visits</source>
        <translation>leyendo servicios y visitas</translation>
    </message>
    <message>
        <source>counting the days</source>
        <translation>contando los días</translation>
    </message>
    <message>
        <source>comparing the visits</source>
        <translation>comparando las visitas</translation>
    </message>
    <message>
        <source>visits are compared</source>
        <translation>visitas comparadas</translation>
    </message>
    <message>
        <source>reading the visits</source>
        <translation>leyendo las visitas</translation>
    </message>
    <message>
        <source>looking for an order of work</source>
        <translation>buscando un orden de trabajo</translation>
    </message>
    <message>
        <source>measuring</source>
        <translation>midiendo</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
</context>
</TS>
