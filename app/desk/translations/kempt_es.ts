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
        <translation>Del %1 al %2</translation>
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
        <source>0 min</source>
        <translation>0 min</translation>
    </message>
    <message>
        <source>refused</source>
        <translation>rechazada</translation>
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
    <message>
        <source>Keeping the client</source>
        <translation>Guardando la clienta</translation>
    </message>
    <message>
        <source>name, note or consent</source>
        <translation>nombre, nota o consentimiento</translation>
    </message>
    <message>
        <source>Keeping her consent</source>
        <translation>Guardando su consentimiento</translation>
    </message>
    <message>
        <source>her consent</source>
        <translation>su consentimiento</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 del %2</translation>
    </message>
    <message>
        <source>Adding a service</source>
        <translation>Añadiendo un servicio</translation>
    </message>
    <message>
        <source>adding the %1</source>
        <translation>añadir %1</translation>
    </message>
    <message>
        <source>Erasing a service</source>
        <translation>Borrando un servicio</translation>
    </message>
    <message>
        <source>erasing the %1</source>
        <translation>borrar %1</translation>
    </message>
    <message>
        <source>Marking a service as done</source>
        <translation>Marcando un servicio como hecho</translation>
    </message>
    <message>
        <source>“done” of the %1</source>
        <translation>«hecho» de %1</translation>
    </message>
    <message>
        <source>Keeping what she told</source>
        <translation>Guardando lo que contó</translation>
    </message>
    <message>
        <source>Photos (%1);;All files (*)</source>
        <translation>Fotos (%1);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>%1 min %2 s</source>
        <translation>%1 min %2 s</translation>
    </message>
    <message>
        <source>rinse after %1</source>
        <translation>aclarado a los %1</translation>
    </message>
    <message>
        <source>covered %1–%2 %</source>
        <translation>cubierto %1–%2 %</translation>
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
    <message>
        <source>last %1</source>
        <translation>última %1</translation>
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
        <source>Opening a visit</source>
        <translation>Abriendo una visita</translation>
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
    <message>
        <source>covered %1–%2 %</source>
        <translation>cubierto %1–%2 %</translation>
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
    <message>
        <source>%1 per cent farther from the target than at the start</source>
        <translation>%1 por ciento más lejos del objetivo que al principio</translation>
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
    <message>
        <source>Growth of %1 a month (95 %: %2 to %3). %4</source>
        <translation>Crecimiento de %1 al mes (95 %: de %2 a %3). %4</translation>
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
    <message>
        <source>The view that it was taken for.</source>
        <translation>La vista para la que se tomó.</translation>
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
        <translation>%1 del %2</translation>
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
        <source>stripes: could not be made out or is too faint, not counted</source>
        <translation>rayas: no se distinguió o es demasiado tenue, no se cuenta</translation>
    </message>
    <message>
        <source>taken out by hand; removing the mark brings it back</source>
        <translation>quitada a mano; al borrar la marca vuelve</translation>
    </message>
    <message>
        <source>joined by hand; removing the mark parts them</source>
        <translation>unidas a mano; al borrar la marca se separan</translation>
    </message>
    <message>
        <source>a hair of its own; removing the mark takes that back</source>
        <translation>cabello aparte; al borrar la marca deja de serlo</translation>
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
    <message>
        <source>The mark of a hair of its own is picked; removing it counts the strand as before.</source>
        <translation>Elegida la marca de un cabello aparte; al borrarla la hebra cuenta como antes.</translation>
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
        <source>Put %1 back</source>
        <translation>Volver a poner %1</translation>
    </message>
    <message>
        <source>Put %1 back on the plan</source>
        <translation>Volver a poner %1 en el plan</translation>
    </message>
    <message>
        <source>an answer before the service</source>
        <translation>una respuesta antes del servicio</translation>
    </message>
    <message>
        <source>“every service is in the record”</source>
        <translation>«todos los servicios están en la ficha»</translation>
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
        <source>what was told of hair and days</source>
        <translation>lo que contó de su cabello y sus días</translation>
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
    <message>
        <source>%1 % behind the start</source>
        <translation>%1 % por detrás del comienzo</translation>
    </message>
    <message>
        <source>target of %1, %2</source>
        <translation>objetivo de %1, %2</translation>
    </message>
    <message>
        <source>%1 % of the way</source>
        <translation>%1 % del camino</translation>
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
    <message>
        <source>Kept with the client: in it she reads the report and the words on its pictures.</source>
        <translation>Se guarda con la clienta: en él lee el informe y las palabras de sus imágenes.</translation>
    </message>
    <message>
        <source>Her language</source>
        <translation>Su idioma</translation>
    </message>
    <message>
        <source>Keeping the language of her report</source>
        <translation>Guardando el idioma de su informe</translation>
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
        <source>the last change of the %1 of %2</source>
        <translation>el último cambio de %1 del %2</translation>
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
        <source>Put back what was erased</source>
        <translation>Recuperar lo borrado</translation>
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
        <source>Put back what was erased: %1</source>
        <translation>Devolver lo borrado: %1</translation>
    </message>
    <message>
        <source>Earlier services (%1 more)</source>
        <translation>Servicios anteriores (%1 más)</translation>
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
        <source>Save the blue gauge sheet</source>
        <translation>Guardar la hoja de medida azul</translation>
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
        <source>blue gauge sheet.pdf</source>
        <translation>hoja de medida azul.pdf</translation>
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
        <source>The blue gauge sheet is saved as %1.</source>
        <translation>La hoja de medida azul se guardó como %1.</translation>
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
        <source>Save the blue sheet to print…</source>
        <translation>Guardar la hoja azul para imprimir…</translation>
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
        <source>Print at 100 %, without fitting to the page: the card on matt card, to cut out; the sheet, a whole page, lies behind ends and combed-out strands: the white one, or, behind grey and white ends, the blue one, printed in colour.</source>
        <translation>Imprima al 100 %, sin ajustar a la página: la tarjeta en cartulina mate, para recortar; la hoja, una página entera, va detrás de las puntas y de las hebras peinadas: la blanca o, detrás de puntas grises y blancas, la azul, impresa en color.</translation>
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
    <message>
        <source>Each client&apos;s report has a language of its own, chosen on its page. Still English in every language: saved tables, the names of published sources and the command line. Answer keys stay Y, N and U.</source>
        <translation>El informe de cada clienta tiene su propio idioma, que se elige en su página. Siguen en inglés en cualquier idioma: las tablas guardadas, los nombres de las fuentes publicadas y la línea de órdenes. Las teclas de respuesta siguen siendo Y, N y U.</translation>
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
        <translation>Deshacer correcciones</translation>
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
        <source>hair of its own</source>
        <translation>cabello aparte</translation>
    </message>
    <message>
        <source>hairs of their own</source>
        <translation>cabellos aparte</translation>
    </message>
    <message>
        <source>A hair of its own</source>
        <translation>Cabello aparte</translation>
    </message>
    <message>
        <source>The chosen strand is all there, though it ends on another: it is no part of one (O)</source>
        <translation>La hebra elegida está completa aunque acabe sobre otra: no es parte de ella (O)</translation>
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
        <source>%1 traced, counted as %2: some that end on another, perhaps longer, are likely parts of one hair. Join those that are, and say which are hairs of their own.</source>
        <translation>%1 en el trazado, contadas como %2: algunas que acaban en otra, quizá más largas, serán partes de un mismo cabello. Únalas si lo son, y diga cuáles son cabellos aparte.</translation>
    </message>
    <message>
        <source>line</source>
        <translation>línea</translation>
    </message>
    <message>
        <source>lines</source>
        <translation>líneas</translation>
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
        <source>perhaps longer</source>
        <translation>quizá más larga</translation>
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
        <source>%1. %2%3: from %4 to %5; carries it %6 to %7 min, needs %8 min: %9%10.</source>
        <translation>%1. %2%3: de %4 a %5; lo lleva de %6 a %7 min, necesita %8 min: %9%10.</translation>
    </message>
    <message>
        <source>, beyond what is tolerated</source>
        <translation>, más de lo tolerado</translation>
    </message>
    <message>
        <source>Rinse after %1.</source>
        <translation>Aclarado a los %1.</translation>
    </message>
</context>
<context>
    <name>kempt::desk::ToneDetails</name>
    <message>
        <source>Mixed hair: each colour is the mean of the light and the dark strands over a width of %1.</source>
        <translation>Cabello de color mezclado: cada color es la media de los cabellos claros y oscuros en un ancho de %1.</translation>
    </message>
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
    <message>
        <source>ΔE: how far two colours lie apart to the eye (CIEDE2000). Side by side, 1 to 2 is just about seen.</source>
        <translation>ΔE: cuánto se apartan dos colores a la vista (CIEDE2000). Lado a lado, de 1 a 2 apenas se nota.</translation>
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
    <message>
        <source>Take back: %1 (Ctrl+Z)</source>
        <translation>Deshacer: %1 (Ctrl+Z)</translation>
    </message>
</context>
<context>
    <name>kempt::desk::Undo</name>
    <message>
        <source>Taking back</source>
        <translation>Deshaciendo</translation>
    </message>
    <message>
        <source>Doing it again</source>
        <translation>Rehaciendo</translation>
    </message>
    <message>
        <source>Taken back: %1.</source>
        <translation>Deshecho: %1.</translation>
    </message>
    <message>
        <source>Done again: %1.</source>
        <translation>Rehecho: %1.</translation>
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
    <message>
        <source>day of the visit</source>
        <translation>día de la visita</translation>
    </message>
    <message>
        <source>how the hair was</source>
        <translation>cómo estaba el cabello</translation>
    </message>
    <message>
        <source>note on the visit</source>
        <translation>nota de la visita</translation>
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
        <translation>En este orden cada parte queda dentro de lo tolerado, con un solo aclarado a los %1 de la primera pasada.</translation>
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
</TS>
