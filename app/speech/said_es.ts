<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es_ES">
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
        <source>The hair is about as light as the sheet in this photo, so the two cannot be told apart: lay it on the blue gauge sheet.</source>
        <translation>En esta foto el cabello es casi tan claro como la hoja, así que no se distinguen: póngalo sobre la hoja de medida azul.</translation>
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
        <source>Spread them further apart, or take those out that are none, join those that are one and say which are hairs of their own.</source>
        <translation>Sepárelas más, o quite las que no lo son, una las que son una sola y diga cuáles son cabellos aparte.</translation>
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
        <source>Too many of the strands could not be followed from end to end without a guess.</source>
        <translation>Demasiadas hebras no se pudieron seguir de punta a punta sin adivinar.</translation>
    </message>
    <message>
        <source>Lay down a few longer ones that do not touch, away from the rim and the card, in brighter, even light.</source>
        <translation>Ponga unas pocas más largas que no se toquen, lejos del borde y de la tarjeta, con luz más clara y uniforme.</translation>
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
        <source>%1 % of the value</source>
        <translation>%1 % del valor</translation>
    </message>
    <message>
        <source>%1 % of what the value has above %2</source>
        <translation>%1 % de lo que el valor tiene por encima de %2</translation>
    </message>
    <message>
        <source>%1 % of what the value lacks to %2</source>
        <translation>%1 % de lo que al valor le falta para %2</translation>
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
        <source>lustre</source>
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
        <source>Lustre</source>
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
    <message>
        <source>Draw the line anew, or mark two or more anchors (moles, scars) near it on both photos.</source>
        <translation>Dibuje la línea de nuevo, o marque dos o más puntos de anclaje (lunares, cicatrices) cerca de ella en ambas fotos.</translation>
    </message>
    <message>
        <source>The anchors of the two photos do not fit each other.</source>
        <translation>Los puntos de anclaje de las dos fotos no encajan entre sí.</translation>
    </message>
    <message>
        <source>Mark the same places in the same order on both photos.</source>
        <translation>Marque los mismos lugares en el mismo orden en ambas fotos.</translation>
    </message>
    <message>
        <source>There is too little bare skin beside the line on the photos.</source>
        <translation>En las fotos hay muy poca piel desnuda junto a la línea.</translation>
    </message>
    <message>
        <source>Draw the line anew, or mark two or more anchors (moles, scars) on both photos.</source>
        <translation>Dibuje la línea de nuevo, o marque dos o más puntos de anclaje (lunares, cicatrices) en ambas fotos.</translation>
    </message>
    <message>
        <source>Both photos have to show the gauge card.</source>
        <translation>Ambas fotos tienen que mostrar la tarjeta de medida.</translation>
    </message>
    <message>
        <source>Draw the line on this photo by hand.</source>
        <translation>Dibuje a mano la línea en esta foto.</translation>
    </message>
    <message>
        <source>The earlier photo has neither an edge line nor two anchors.</source>
        <translation>La foto anterior no tiene ni línea del contorno ni dos puntos de anclaje.</translation>
    </message>
    <message>
        <source>Draw the edge line on it first.</source>
        <translation>Dibuje antes en ella la línea del contorno.</translation>
    </message>
    <message>
        <source>Laying the photos over each other was stopped.</source>
        <translation>Se detuvo la superposición de las fotos.</translation>
    </message>
    <message>
        <source>The skin beside the line shows too little that could be found again.</source>
        <translation>La piel junto a la línea muestra muy poco que se pueda volver a encontrar.</translation>
    </message>
    <message>
        <source>There is too little bare skin beside the line on the earlier photo.</source>
        <translation>En la foto anterior hay muy poca piel desnuda junto a la línea.</translation>
    </message>
    <message>
        <source>The skin beside the line could not be found again on the new photo.</source>
        <translation>La piel junto a la línea no se pudo encontrar de nuevo en la foto nueva.</translation>
    </message>
    <message>
        <source>The two points for the scale are too close together or their distance is not a length above 0 mm.</source>
        <translation>Los dos puntos de la escala están demasiado juntos o su distancia no es una longitud mayor que 0 mm.</translation>
    </message>
    <message>
        <source>Set two points at least 10 pixels apart, as far apart as the photo allows, and state their distance in mm.</source>
        <translation>Marque dos puntos separados al menos 10 píxeles, tanto como la foto permita, e indique su distancia en mm.</translation>
    </message>
    <message>
        <source>%1 is no number from 0 on that can be.</source>
        <translation>%1 no es un número posible de 0 en adelante.</translation>
    </message>
    <message>
        <source>%1 ends before it begins.</source>
        <translation>%1 termina antes de empezar.</translation>
    </message>
    <message>
        <source>Correct it in the record.</source>
        <translation>Corríjalo en el historial.</translation>
    </message>
    <message>
        <source>%1: the line is no length with its range.</source>
        <translation>%1: la línea no es una longitud con su margen.</translation>
    </message>
    <message>
        <source>%1: the line was measured before the service.</source>
        <translation>%1: la línea se midió antes del servicio.</translation>
    </message>
    <message>
        <source>%1 is planned beyond the end of the hair.</source>
        <translation>%1 está previsto más allá del final del cabello.</translation>
    </message>
    <message>
        <source>The growth rate is not above zero or too uncertain.</source>
        <translation>La velocidad de crecimiento no es mayor que cero o es demasiado incierta.</translation>
    </message>
    <message>
        <source>A grade is not 0 to 4.</source>
        <translation>Un grado no está entre 0 y 4.</translation>
    </message>
    <message>
        <source>A grade is of no known quality.</source>
        <translation>Un grado es de una cualidad desconocida.</translation>
    </message>
    <message>
        <source>A reading is no number with its interval.</source>
        <translation>Una medida no es un número con su intervalo.</translation>
    </message>
    <message>
        <source>%1 (at character %2).</source>
        <translation>%1 (en el carácter %2).</translation>
    </message>
    <message>
        <source>Correct the condition.</source>
        <translation>Corrija la condición.</translation>
    </message>
    <message>
        <source>The new growth is not a length with its range.</source>
        <translation>El crecimiento nuevo no es una longitud con su margen.</translation>
    </message>
    <message>
        <source>Give millimetres from the scalp, 0 or more.</source>
        <translation>Indique milímetros desde el cuero cabelludo, 0 o más.</translation>
    </message>
    <message>
        <source>The growth rate is not above zero, or too uncertain to use.</source>
        <translation>La velocidad de crecimiento no es mayor que cero, o es demasiado incierta para usarla.</translation>
    </message>
    <message>
        <source>Use the published rate of the client&apos;s group.</source>
        <translation>Use la velocidad publicada para el grupo de la clienta.</translation>
    </message>
    <message>
        <source>The time is not between 0 and 520 weeks.</source>
        <translation>El tiempo no está entre 0 y 520 semanas.</translation>
    </message>
    <message>
        <source>Give the weeks since the service.</source>
        <translation>Indique las semanas desde el servicio.</translation>
    </message>
    <message>
        <source>A client&apos;s own rate needs 4 to 104 weeks of growth.</source>
        <translation>La velocidad propia de una clienta necesita de 4 a 104 semanas de crecimiento.</translation>
    </message>
    <message>
        <source>Measure again when more has grown.</source>
        <translation>Mida de nuevo cuando haya crecido más.</translation>
    </message>
    <message>
        <source>Hair does not grow that slowly.</source>
        <translation>El cabello no crece tan despacio.</translation>
    </message>
    <message>
        <source>Hair does not grow that fast.</source>
        <translation>El cabello no crece tan deprisa.</translation>
    </message>
    <message>
        <source>The measured line is kept.</source>
        <translation>La línea medida se conserva.</translation>
    </message>
    <message>
        <source>Check that the line is the one of that service and that its date is right.</source>
        <translation>Compruebe que la línea es la de ese servicio y que su fecha es correcta.</translation>
    </message>
    <message>
        <source>Correct the minutes and sections.</source>
        <translation>Corrija los minutos y las secciones.</translation>
    </message>
    <message>
        <source>There are no tasks, or over 48.</source>
        <translation>No hay tareas, o son más de 48.</translation>
    </message>
    <message>
        <source>One to three people apply.</source>
        <translation>Aplican de una a tres personas.</translation>
    </message>
    <message>
        <source>There are too many head sections.</source>
        <translation>Hay demasiadas secciones de la cabeza.</translation>
    </message>
    <message>
        <source>The maker&apos;s maximum is no number of minutes.</source>
        <translation>El máximo del fabricante no es un número de minutos.</translation>
    </message>
    <message>
        <source>A tolerance is a share between 0 and 1.</source>
        <translation>Una tolerancia es una parte entre 0 y 1.</translation>
    </message>
    <message>
        <source>A part has no minutes to apply or to process.</source>
        <translation>Una parte no tiene minutos para aplicar o para actuar.</translation>
    </message>
    <message>
        <source>The %1 need %2 and %3 to apply: more than the maker&apos;s maximum of %4.</source>
        <translation>Las secciones (%1) necesitan %2 y %3 para aplicar: más que el máximo del fabricante de %4.</translation>
    </message>
    <message>
        <source>%1: with the time that the last ones need, the first carry the product longer than the maker&apos;s maximum of %2.</source>
        <translation>%1: con el tiempo que necesitan las últimas, las primeras llevan el producto más que el máximo del fabricante de %2.</translation>
    </message>
    <message>
        <source>%1: the first are over-processed before the last are ready.</source>
        <translation>%1: las primeras se pasan de proceso antes de que las últimas estén listas.</translation>
    </message>
    <message>
        <source>The strand test has no minutes.</source>
        <translation>La prueba de mechón no tiene minutos.</translation>
    </message>
    <message>
        <source>There is no hair to put the product on.</source>
        <translation>No hay cabello en el que poner el producto.</translation>
    </message>
    <message>
        <source>Minutes to apply are no number of minutes.</source>
        <translation>Los minutos para aplicar no son un número de minutos.</translation>
    </message>
    <message>
        <source>Ends cannot be told from mid-shaft: measure how long the hair is first.</source>
        <translation>No se distinguen las puntas de los medios: mida antes cuánto mide el cabello.</translation>
    </message>
    <message>
        <source>%1 was measured in different units at the two visits (%2 and %3).</source>
        <translation>%1: se midió en unidades distintas en las dos visitas (%2 y %3).</translation>
    </message>
    <message>
        <source>%1: it is not known how far repeat shots scatter without any change. Take two or three shots of this view at each visit.</source>
        <translation>%1: no se sabe cuánto varían las tomas repetidas sin ningún cambio. Haga dos o tres tomas de esta vista en cada visita.</translation>
    </message>
    <message>
        <source>Single strands are measured on the white gauge sheet, and this photo shows the blue one.</source>
        <translation>Las hebras sueltas se miden sobre la hoja de medida blanca, y esta foto muestra la azul.</translation>
    </message>
    <message>
        <source>Lay the strands on the white gauge sheet.</source>
        <translation>Ponga las hebras sobre la hoja de medida blanca.</translation>
    </message>
    <message>
        <source>No bare sheet was seen around the ends: the region must reach the sheet&apos;s blue beyond them.</source>
        <translation>No se vio hoja libre alrededor de las puntas: la zona debe llegar al azul de la hoja más allá de ellas.</translation>
    </message>
    <message>
        <source>The hair is about as blue as the sheet in this photo, so the two cannot be told apart: lay it on the white gauge sheet.</source>
        <translation>En esta foto el cabello es casi tan azul como la hoja, así que no se distinguen: póngalo sobre la hoja de medida blanca.</translation>
    </message>
    <message>
        <source>The strands are hardly clearer than the noise of the photo, and others may not be seen at all. Take the photo in more light, sharper, or at a higher quality.</source>
        <translation>Las hebras apenas se ven más claras que el ruido de la foto, y otras quizá no se vean. Tome la foto con más luz, más nítida o con mayor calidad.</translation>
    </message>
    <message>
        <source>The region of the strands is not an outline inside the photo.</source>
        <translation>La zona de las hebras no es un contorno dentro de la foto.</translation>
    </message>
    <message>
        <source>Draw a region of four corners around the strands.</source>
        <translation>Dibuje una zona de cuatro esquinas alrededor de las hebras.</translation>
    </message>
    <message>
        <source>The region of the strands lies outside the gauge sheet.</source>
        <translation>La zona de las hebras queda fuera de la hoja de medida.</translation>
    </message>
    <message>
        <source>Draw a region of four corners around the strands, on the sheet.</source>
        <translation>Dibuje una zona de cuatro esquinas alrededor de las hebras, en la hoja.</translation>
    </message>
    <message>
        <source>Measuring was stopped.</source>
        <translation>Se detuvo la medición.</translation>
    </message>
    <message>
        <source>The region has no length, or more than a metre.</source>
        <translation>La zona no tiene longitud, o tiene más de un metro.</translation>
    </message>
    <message>
        <source>Draw the four corners in order around the ends, and check the scale.</source>
        <translation>Dibuje las cuatro esquinas en orden alrededor de las puntas y compruebe la escala.</translation>
    </message>
    <message>
        <source>The region is more than a metre wide.</source>
        <translation>La zona tiene más de un metro de ancho.</translation>
    </message>
    <message>
        <source>Check the scale.</source>
        <translation>Compruebe la escala.</translation>
    </message>
    <message>
        <source>A strand&apos;s length must be more than 0 mm.</source>
        <translation>La longitud de una hebra debe ser mayor que 0 mm.</translation>
    </message>
    <message>
        <source>Measure the strand again, at rest and pulled.</source>
        <translation>Mida la hebra de nuevo, en reposo y estirada.</translation>
    </message>
    <message>
        <source>Too few strands could be followed over 30 mm. Lay down a few longer strands that do not touch, and take the photo in brighter, even light.</source>
        <translation>Muy pocas hebras se pudieron seguir a lo largo de 30 mm. Ponga unas pocas hebras más largas que no se toquen y tome la foto con luz más clara y uniforme.</translation>
    </message>
    <message>
        <source>A strand of fewer than five points, or shorter than 10 mm, has no shape that can be measured.</source>
        <translation>Una hebra de menos de cinco puntos, o de menos de 10 mm, no tiene una forma que se pueda medir.</translation>
    </message>
    <message>
        <source>Lay down a longer strand.</source>
        <translation>Ponga una hebra más larga.</translation>
    </message>
    <message>
        <source>The highlight lies at another place of the region, so the light or the camera stood elsewhere.</source>
        <translation>El brillo cae en otro lugar de la zona, así que la luz o la cámara estaban en otro sitio.</translation>
    </message>
    <message>
        <source>The highlight runs across the hair at another angle, so the light or the camera stood elsewhere.</source>
        <translation>El brillo cruza el cabello con otro ángulo, así que la luz o la cámara estaban en otro sitio.</translation>
    </message>
    <message>
        <source>The light falls off over the card in another way, so the lamps stood elsewhere.</source>
        <translation>La luz decae de otro modo sobre la tarjeta, así que las lámparas estaban en otro sitio.</translation>
    </message>
    <message>
        <source>Measuring the shine was stopped.</source>
        <translation>Se detuvo la medición del brillo.</translation>
    </message>
    <message>
        <source>The settings for tone make no sense.</source>
        <translation>Los ajustes del tono no tienen sentido.</translation>
    </message>
    <message>
        <source>Use a lane and a step above 0 mm and zones of at most a third of the strand.</source>
        <translation>Use un carril y un paso mayores que 0 mm y zonas de un tercio de la hebra como mucho.</translation>
    </message>
    <message>
        <source>Check the disk and try again; if it stays, check the book.</source>
        <translation>Compruebe el disco e inténtelo de nuevo; si sigue igual, compruebe el libro.</translation>
    </message>
    <message>
        <source>The book as it was is kept in %1.</source>
        <translation>El libro tal como estaba se guarda en %1.</translation>
    </message>
    <message>
        <source>The backup and the book are the same file.</source>
        <translation>La copia de seguridad y el libro son el mismo archivo.</translation>
    </message>
    <message>
        <source>Name the backup first and the book second.</source>
        <translation>Nombre primero la copia y después el libro.</translation>
    </message>
    <message>
        <source>Check the disk, the folder and the free space.</source>
        <translation>Compruebe el disco, la carpeta y el espacio libre.</translation>
    </message>
    <message>
        <source>%1 was brought back, but may be lost when the power fails.</source>
        <translation>%1 se recuperó, pero puede perderse si falla la corriente.</translation>
    </message>
    <message>
        <source>The backup is unchanged.</source>
        <translation>La copia de seguridad no ha cambiado.</translation>
    </message>
    <message>
        <source>The file was left as it is.</source>
        <translation>El archivo se dejó como estaba.</translation>
    </message>
    <message>
        <source>Choose another name, or open that file.</source>
        <translation>Elija otro nombre, o abra ese archivo.</translation>
    </message>
    <message>
        <source>A new book without clients was left there.</source>
        <translation>Allí quedó un libro nuevo sin clientas.</translation>
    </message>
    <message>
        <source>No file was left behind.</source>
        <translation>No quedó ningún archivo.</translation>
    </message>
    <message>
        <source>%1 can be read but not written, or its folder cannot.</source>
        <translation>%1 se puede leer pero no escribir, o su carpeta no se puede.</translation>
    </message>
    <message>
        <source>%1 was written by a newer Kempt.</source>
        <translation>%1 lo escribió un Kempt más nuevo.</translation>
    </message>
    <message>
        <source>Install the newer Kempt to open it.</source>
        <translation>Instale el Kempt más nuevo para abrirlo.</translation>
    </message>
    <message>
        <source>%1 contradicts itself about its version.</source>
        <translation>%1 se contradice sobre su versión.</translation>
    </message>
    <message>
        <source>Bring back the latest backup.</source>
        <translation>Recupere la última copia de seguridad.</translation>
    </message>
    <message>
        <source>%1 has lost its bytes.</source>
        <translation>%1 perdió sus datos.</translation>
    </message>
    <message>
        <source>%1 is damaged: its bytes are not those that were stored.</source>
        <translation>%1 está dañado: sus datos no son los que se guardaron.</translation>
    </message>
    <message>
        <source>The check was stopped.</source>
        <translation>Se detuvo la comprobación.</translation>
    </message>
    <message>
        <source>The client has no name.</source>
        <translation>La clienta no tiene nombre.</translation>
    </message>
    <message>
        <source>Give a name with at least one letter.</source>
        <translation>Dé un nombre con al menos una letra.</translation>
    </message>
    <message>
        <source>A heat tool has no name.</source>
        <translation>Una herramienta de calor no tiene nombre.</translation>
    </message>
    <message>
        <source>Name it, or leave it out.</source>
        <translation>Póngale nombre, o déjela fuera.</translation>
    </message>
    <message>
        <source>Record %1 of %2 points at a record of %3 that is not there.</source>
        <translation>El registro %1 de %2 remite a un registro de %3 que no existe.</translation>
    </message>
    <message>
        <source>Another window is reading the book.</source>
        <translation>Otra ventana está leyendo el libro.</translation>
    </message>
    <message>
        <source>It is cleared as soon as nobody reads.</source>
        <translation>Se limpia en cuanto nadie lea.</translation>
    </message>
    <message>
        <source>The book does not take this entry (%1).</source>
        <translation>El libro no acepta esta entrada (%1).</translation>
    </message>
    <message>
        <source>Correct the entry.</source>
        <translation>Corrija la entrada.</translation>
    </message>
    <message>
        <source>The database could not do its work (%1).</source>
        <translation>La base de datos no pudo hacer su trabajo (%1).</translation>
    </message>
    <message>
        <source>Try again; if it stays, check the book.</source>
        <translation>Inténtelo de nuevo; si sigue igual, compruebe el libro.</translation>
    </message>
    <message>
        <source>%1 is not a Kempt book: %2.</source>
        <translation>%1 no es un libro de Kempt: %2.</translation>
    </message>
    <message>
        <source>Choose the book&apos;s own file.</source>
        <translation>Elija el archivo del propio libro.</translation>
    </message>
    <message>
        <source>There is no file %1.</source>
        <translation>No existe el archivo %1.</translation>
    </message>
    <message>
        <source>Check the name, or create a new book.</source>
        <translation>Compruebe el nombre, o cree un libro nuevo.</translation>
    </message>
    <message>
        <source>%1 could not be read (%2).</source>
        <translation>%1 no se pudo leer (%2).</translation>
    </message>
    <message>
        <source>Check that you may read the file.</source>
        <translation>Compruebe que puede leer el archivo.</translation>
    </message>
    <message>
        <source>%1 has been cut short.</source>
        <translation>%1 está cortado.</translation>
    </message>
    <message>
        <source>%1 does not say which version it is.</source>
        <translation>%1 no dice de qué versión es.</translation>
    </message>
    <message>
        <source>%1 was written by a newer Kempt (book version %2; this Kempt reads up to %3).</source>
        <translation>%1 lo escribió un Kempt más nuevo (libro versión %2; este Kempt lee hasta la %3).</translation>
    </message>
    <message>
        <source>Install %1 to open it.</source>
        <translation>Instale %1 para abrirlo.</translation>
    </message>
    <message>
        <source>%1 could not be written to the disk (%2).</source>
        <translation>%1 no se pudo escribir en el disco (%2).</translation>
    </message>
    <message>
        <source>%1 could not be written (%2).</source>
        <translation>%1 no se pudo escribir (%2).</translation>
    </message>
    <message>
        <source>Check the name and that you may write in that folder.</source>
        <translation>Compruebe el nombre y que puede escribir en esa carpeta.</translation>
    </message>
    <message>
        <source>The grade does not say where or of what it is.</source>
        <translation>El grado no dice de dónde ni de qué es.</translation>
    </message>
    <message>
        <source>Give zone and quality.</source>
        <translation>Indique zona y cualidad.</translation>
    </message>
    <message>
        <source>A grade goes from 0 to 4, not %1.</source>
        <translation>Un grado va de 0 a 4, no %1.</translation>
    </message>
    <message>
        <source>Choose one of the five steps.</source>
        <translation>Elija uno de los cinco pasos.</translation>
    </message>
    <message>
        <source>Gradings are counted from 1.</source>
        <translation>Las rondas de grados se cuentan desde 1.</translation>
    </message>
    <message>
        <source>Give a round of 1 or more.</source>
        <translation>Indique una ronda de 1 o más.</translation>
    </message>
    <message>
        <source>This visit already has a grade of %1 at %2 in round %3.</source>
        <translation>Esta visita ya tiene un grado de %1 en %2 en la ronda %3.</translation>
    </message>
    <message>
        <source>Change that one, or grade again as the next round.</source>
        <translation>Cambie ese, o ponga otra vez los grados como ronda siguiente.</translation>
    </message>
    <message>
        <source>A point of the marks is not a number.</source>
        <translation>Un punto de las marcas no es un número.</translation>
    </message>
    <message>
        <source>Draw the marks again.</source>
        <translation>Dibuje las marcas de nuevo.</translation>
    </message>
    <message>
        <source>%1 is no kind of gauge sheet.</source>
        <translation>%1 no es un tipo de hoja de medida.</translation>
    </message>
    <message>
        <source>Use hem, combings or strand.</source>
        <translation>Use hem, combings o strand.</translation>
    </message>
    <message>
        <source>Joined strands need two points each.</source>
        <translation>Las hebras unidas necesitan dos puntos cada una.</translation>
    </message>
    <message>
        <source>Join them again.</source>
        <translation>Únalas de nuevo.</translation>
    </message>
    <message>
        <source>A scale needs two points and the millimetres between them.</source>
        <translation>Una escala necesita dos puntos y los milímetros entre ellos.</translation>
    </message>
    <message>
        <source>Give both, or neither.</source>
        <translation>Indique ambos, o ninguno.</translation>
    </message>
    <message>
        <source>Readings were taken from these marks, which therefore stay as they are.</source>
        <translation>De estas marcas se tomaron medidas, por eso se quedan como están.</translation>
    </message>
    <message>
        <source>Add the corrected marks as new ones and measure again.</source>
        <translation>Añada las marcas corregidas como nuevas y mida otra vez.</translation>
    </message>
    <message>
        <source>Shots of a view are counted from 1.</source>
        <translation>Las tomas de una vista se cuentan desde 1.</translation>
    </message>
    <message>
        <source>Give a shot of 1 or more.</source>
        <translation>Indique una toma de 1 o más.</translation>
    </message>
    <message>
        <source>The photo&apos;s size in pixels is missing.</source>
        <translation>Falta el tamaño de la foto en píxeles.</translation>
    </message>
    <message>
        <source>Read the photo again.</source>
        <translation>Lea la foto de nuevo.</translation>
    </message>
    <message>
        <source>The book does not keep photos of the kind %1.</source>
        <translation>El libro no guarda fotos del tipo %1.</translation>
    </message>
    <message>
        <source>Use JPEG, PNG, WebP, TIFF or HEIC.</source>
        <translation>Use JPEG, PNG, WebP, TIFF o HEIC.</translation>
    </message>
    <message>
        <source>%1 is no level of the quality gate.</source>
        <translation>%1 no es un nivel de la puerta de calidad.</translation>
    </message>
    <message>
        <source>Use good, usable or refused.</source>
        <translation>Use good, usable o refused.</translation>
    </message>
    <message>
        <source>Shot %1 of %2 is already there for this visit.</source>
        <translation>La toma %1 de %2 ya existe en esta visita.</translation>
    </message>
    <message>
        <source>Use the next number.</source>
        <translation>Use el número siguiente.</translation>
    </message>
    <message>
        <source>The photo has no content.</source>
        <translation>La foto no tiene contenido.</translation>
    </message>
    <message>
        <source>Copy it from the camera again.</source>
        <translation>Cópiela de nuevo de la cámara.</translation>
    </message>
    <message>
        <source>The photo&apos;s bytes are not those that were read.</source>
        <translation>Los datos de la foto no son los que se leyeron.</translation>
    </message>
    <message>
        <source>This photo is already in the book (visit %1, %2, shot %3).</source>
        <translation>Esta foto ya está en el libro (visita %1, %2, toma %3).</translation>
    </message>
    <message>
        <source>Choose another one; a copy is not a repeat shot.</source>
        <translation>Elija otra; una copia no es una toma repetida.</translation>
    </message>
    <message>
        <source>The %1 and the day on which it was told go together.</source>
        <translation>El dato (%1) y el día en que se dijo van juntos.</translation>
    </message>
    <message>
        <source>Give both or neither.</source>
        <translation>Indique ambos o ninguno.</translation>
    </message>
    <message>
        <source>A day is given on which it was told how far the record goes back, but not how far.</source>
        <translation>Se indica el día en que se dijo hasta dónde llega el historial, pero no hasta dónde.</translation>
    </message>
    <message>
        <source>Hair has a length above 0 mm.</source>
        <translation>El cabello tiene una longitud mayor que 0 mm.</translation>
    </message>
    <message>
        <source>Leave the length out.</source>
        <translation>Deje fuera la longitud.</translation>
    </message>
    <message>
        <source>There is no question called %1.</source>
        <translation>No hay ninguna pregunta llamada %1.</translation>
    </message>
    <message>
        <source>Use one of their names.</source>
        <translation>Use uno de sus nombres.</translation>
    </message>
    <message>
        <source>The book does not know the %1.</source>
        <translation>El libro no conoce %1.</translation>
    </message>
    <message>
        <source>Use one of its names.</source>
        <translation>Use uno de sus nombres.</translation>
    </message>
    <message>
        <source>The %1 is refused without a reason.</source>
        <translation>La medida %1 se rechazó sin un motivo.</translation>
    </message>
    <message>
        <source>Give code and text.</source>
        <translation>Indique código y texto.</translation>
    </message>
    <message>
        <source>The %1 is kept in %2, not in %3.</source>
        <translation>La medida %1 se guarda en %2, no en %3.</translation>
    </message>
    <message>
        <source>Convert it first.</source>
        <translation>Conviértala antes.</translation>
    </message>
    <message>
        <source>The %1 is not a number.</source>
        <translation>El dato %1 no es un número.</translation>
    </message>
    <message>
        <source>Measure again.</source>
        <translation>Mida otra vez.</translation>
    </message>
    <message>
        <source>The %1 lies outside its own interval.</source>
        <translation>La medida %1 queda fuera de su propio intervalo.</translation>
    </message>
    <message>
        <source>The %1 has a value that it cannot have.</source>
        <translation>La medida %1 tiene un valor que no puede tener.</translation>
    </message>
    <message>
        <source>There are no readings to keep.</source>
        <translation>No hay medidas que guardar.</translation>
    </message>
    <message>
        <source>Measure first.</source>
        <translation>Mida antes.</translation>
    </message>
    <message>
        <source>These readings are not of one measurement of one photo.</source>
        <translation>Estas medidas no son de una sola medición de una sola foto.</translation>
    </message>
    <message>
        <source>Keep each measurement by itself.</source>
        <translation>Guarde cada medición por separado.</translation>
    </message>
    <message>
        <source>The readings do not say when and by which version they were taken.</source>
        <translation>Las medidas no dicen cuándo ni con qué versión se tomaron.</translation>
    </message>
    <message>
        <source>The readings were taken from other bytes than those of the photo.</source>
        <translation>Las medidas se tomaron de otros datos que los de la foto.</translation>
    </message>
    <message>
        <source>Measure the photo in the book.</source>
        <translation>Mida la foto en el libro.</translation>
    </message>
    <message>
        <source>A line of demarcation and the day on which it was measured go together.</source>
        <translation>Una línea de demarcación y el día en que se midió van juntos.</translation>
    </message>
    <message>
        <source>The line was measured before the service.</source>
        <translation>La línea se midió antes del servicio.</translation>
    </message>
    <message>
        <source>Correct one of the days.</source>
        <translation>Corrija uno de los días.</translation>
    </message>
    <message>
        <source>A head section has no name.</source>
        <translation>Una sección de la cabeza no tiene nombre.</translation>
    </message>
    <message>
        <source>Leave it out.</source>
        <translation>Déjela fuera.</translation>
    </message>
    <message>
        <source>The service ends before it begins.</source>
        <translation>El servicio termina antes de empezar.</translation>
    </message>
    <message>
        <source>Give the end beyond the beginning.</source>
        <translation>Indique el final más allá del principio.</translation>
    </message>
    <message>
        <source>The patch test was put on after the service.</source>
        <translation>La prueba de alergia se puso después del servicio.</translation>
    </message>
    <message>
        <source>The service does not say what was done.</source>
        <translation>El servicio no dice qué se hizo.</translation>
    </message>
    <message>
        <source>Choose its kind.</source>
        <translation>Elija su tipo.</translation>
    </message>
    <message>
        <source>The setting has no name.</source>
        <translation>El ajuste no tiene nombre.</translation>
    </message>
    <message>
        <source>Give it one.</source>
        <translation>Póngale uno.</translation>
    </message>
    <message>
        <source>The book was used from a thread that did not open it.</source>
        <translation>El libro se usó desde un hilo que no lo abrió.</translation>
    </message>
    <message>
        <source>Open the book again in that thread.</source>
        <translation>Abra el libro de nuevo en ese hilo.</translation>
    </message>
    <message>
        <source>A record in the book holds what Kempt never writes there.</source>
        <translation>Un registro del libro contiene lo que Kempt nunca escribe ahí.</translation>
    </message>
    <message>
        <source>There is no %1 %2 in the book.</source>
        <translation>No hay %1 %2 en el libro.</translation>
    </message>
    <message>
        <source>It may have been erased; look at the list again.</source>
        <translation>Puede que se haya borrado; mire la lista otra vez.</translation>
    </message>
    <message>
        <source>The date of the %1 is missing or is no date.</source>
        <translation>La fecha (%1) falta o no es una fecha.</translation>
    </message>
    <message>
        <source>Give it as YYYY-MM-DD.</source>
        <translation>Indíquela como AAAA-MM-DD.</translation>
    </message>
    <message>
        <source>Correct it.</source>
        <translation>Corríjalo.</translation>
    </message>
    <message>
        <source>The %1 cannot be %2.</source>
        <translation>El dato %1 no puede ser %2.</translation>
    </message>
    <message>
        <source>Give a number from 0 to %1.</source>
        <translation>Indique un número de 0 a %1.</translation>
    </message>
    <message>
        <source>Choose one of: %1.</source>
        <translation>Elija uno de: %1.</translation>
    </message>
    <message>
        <source>A target cannot be below 0.</source>
        <translation>Un objetivo no puede ser menor que 0.</translation>
    </message>
    <message>
        <source>Give 0 or more.</source>
        <translation>Indique 0 o más.</translation>
    </message>
    <message>
        <source>The book does not know the reading %1.</source>
        <translation>El libro no conoce la medida %1.</translation>
    </message>
    <message>
        <source>A target for this reading cannot be below %1%2.</source>
        <translation>Un objetivo para esta medida no puede ser menor que %1%2.</translation>
    </message>
    <message>
        <source>Give a value that the reading can have.</source>
        <translation>Indique un valor que la medida pueda tener.</translation>
    </message>
    <message>
        <source>There already is a target for %1 at %2.</source>
        <translation>Ya hay un objetivo para %1 en %2.</translation>
    </message>
    <message>
        <source>Change that one.</source>
        <translation>Cambie ese.</translation>
    </message>
    <message>
        <source>This change was already finished.</source>
        <translation>Este cambio ya estaba terminado.</translation>
    </message>
    <message>
        <source>The file %1 is a book and is never written over.</source>
        <translation>El archivo %1 es un libro y nunca se sobrescribe.</translation>
    </message>
    <message>
        <source>Nothing was written.</source>
        <translation>No se escribió nada.</translation>
    </message>
    <message>
        <source>Choose another name.</source>
        <translation>Elija otro nombre.</translation>
    </message>
    <message>
        <source>In the marks, &quot;%1&quot; %2.</source>
        <translation>En las marcas, «%1» %2.</translation>
    </message>
    <message>
        <source>Correct the marks file and try again.</source>
        <translation>Corrija el archivo de marcas e inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>The marks are not a JSON object%1.</source>
        <translation>Las marcas no son un objeto JSON%1.</translation>
    </message>
    <message>
        <source>The file is empty.</source>
        <translation>El archivo está vacío.</translation>
    </message>
    <message>
        <source>Copy it from the camera or phone again.</source>
        <translation>Cópielo de nuevo de la cámara o del teléfono.</translation>
    </message>
    <message>
        <source>The %1 photo ends too early: part of it is missing.</source>
        <translation>La foto %1 termina antes de tiempo: le falta una parte.</translation>
    </message>
    <message>
        <source>The %1 photo is damaged and cannot be read in full%2.</source>
        <translation>La foto %1 está dañada y no se puede leer entera%2.</translation>
    </message>
    <message>
        <source>The file is an animation or a burst of pictures, not one photo.</source>
        <translation>El archivo es una animación o una ráfaga de imágenes, no una sola foto.</translation>
    </message>
    <message>
        <source>Save the one picture that is wanted as JPEG or PNG.</source>
        <translation>Guarde como JPEG o PNG la imagen que quiera.</translation>
    </message>
    <message>
        <source>The photo has %1 x %2 pixels (%3 megapixels); the limit is %4 megapixels.</source>
        <translation>La foto tiene %1 x %2 píxeles (%3 megapíxeles); el límite es de %4 megapíxeles.</translation>
    </message>
    <message>
        <source>Save a smaller or cropped copy.</source>
        <translation>Guarde una copia más pequeña o recortada.</translation>
    </message>
    <message>
        <source>The file has %1 MB; the limit is %2 MB.</source>
        <translation>El archivo tiene %1 MB; el límite es de %2 MB.</translation>
    </message>
    <message>
        <source>Save a smaller or cropped copy, or one as JPEG.</source>
        <translation>Guarde una copia más pequeña o recortada, o una en JPEG.</translation>
    </message>
    <message>
        <source>There is not enough memory to open the photo.</source>
        <translation>No hay memoria suficiente para abrir la foto.</translation>
    </message>
    <message>
        <source>Close other programs, or save a smaller copy.</source>
        <translation>Cierre otros programas, o guarde una copia más pequeña.</translation>
    </message>
    <message>
        <source>The photo is of a kind of HEIC that cannot be read here (%1).</source>
        <translation>La foto es de un tipo de HEIC que aquí no se puede leer (%1).</translation>
    </message>
    <message>
        <source>Let the phone save or send it as JPEG.</source>
        <translation>Deje que el teléfono la guarde o la envíe como JPEG.</translation>
    </message>
    <message>
        <source>The photo is stored with an HDR tone curve, which cannot be measured from.</source>
        <translation>La foto está guardada con una curva de tono HDR, con la que no se puede medir.</translation>
    </message>
    <message>
        <source>Switch HDR off in the camera&apos;s settings, or let the phone save it as JPEG.</source>
        <translation>Desactive HDR en los ajustes de la cámara, o deje que el teléfono la guarde como JPEG.</translation>
    </message>
    <message>
        <source>The photo is of a kind of JPEG that Kempt does not read (%1).</source>
        <translation>La foto es de un tipo de JPEG que Kempt no lee (%1).</translation>
    </message>
    <message>
        <source>Save it as an ordinary JPEG or as PNG.</source>
        <translation>Guárdela como un JPEG corriente o como PNG.</translation>
    </message>
    <message>
        <source>The 16-bit PNG marks one colour as transparent, which cannot be read here.</source>
        <translation>El PNG de 16 bits marca un color como transparente, lo que aquí no se puede leer.</translation>
    </message>
    <message>
        <source>Save it without transparency.</source>
        <translation>Guárdelo sin transparencia.</translation>
    </message>
    <message>
        <source>This computer lacks the part of Qt that reads %1.</source>
        <translation>A este equipo le falta la parte de Qt que lee %1.</translation>
    </message>
    <message>
        <source>Install the package qt6-image-formats-plugins, or save the photo as JPEG.</source>
        <translation>Instale el paquete qt6-image-formats-plugins, o guarde la foto como JPEG.</translation>
    </message>
    <message>
        <source>There is no file &quot;%1&quot;.</source>
        <translation>No existe el archivo «%1».</translation>
    </message>
    <message>
        <source>Check its name and folder.</source>
        <translation>Compruebe su nombre y su carpeta.</translation>
    </message>
    <message>
        <source>The file &quot;%1&quot; cannot be read: %2.</source>
        <translation>El archivo «%1» no se puede leer: %2.</translation>
    </message>
    <message>
        <source>Check that it is a photo file that you may open, and that the card or disk is still there.</source>
        <translation>Compruebe que es un archivo de foto que puede abrir y que la tarjeta o el disco siguen ahí.</translation>
    </message>
    <message>
        <source>Save it as JPEG, PNG, WebP, TIFF or HEIC and add it again.</source>
        <translation>Guárdelo como JPEG, PNG, WebP, TIFF o HEIC y añádalo de nuevo.</translation>
    </message>
    <message>
        <source>The file is an AVIF picture, which Kempt does not read.</source>
        <translation>El archivo es una imagen AVIF, que Kempt no lee.</translation>
    </message>
    <message>
        <source>The file is a camera&apos;s raw file.</source>
        <translation>El archivo es un archivo en bruto (raw) de una cámara.</translation>
    </message>
    <message>
        <source>Develop it and save it as 16-bit TIFF or as JPEG.</source>
        <translation>Revélelo y guárdelo como TIFF de 16 bits o como JPEG.</translation>
    </message>
    <message>
        <source>The file is a film or another kind of media, not a photo.</source>
        <translation>El archivo es una película u otro tipo de medio, no una foto.</translation>
    </message>
    <message>
        <source>The file is a GIF, which holds too few colours to measure from.</source>
        <translation>El archivo es un GIF, que contiene muy pocos colores para medir.</translation>
    </message>
    <message>
        <source>The file is a PDF document, not a photo.</source>
        <translation>El archivo es un documento PDF, no una foto.</translation>
    </message>
    <message>
        <source>The file is a BMP picture, which Kempt does not read.</source>
        <translation>El archivo es una imagen BMP, que Kempt no lee.</translation>
    </message>
    <message>
        <source>The file is not a photo that Kempt can read.</source>
        <translation>El archivo no es una foto que Kempt pueda leer.</translation>
    </message>
    <message>
        <source>Save it as an RGB TIFF of 8 or 16 bits, or as JPEG.</source>
        <translation>Guárdelo como TIFF RGB de 8 o 16 bits, o como JPEG.</translation>
    </message>
    <message>
        <source>The TIFF holds printing colours (CMYK), which Kempt reads only as JPEG.</source>
        <translation>El TIFF contiene colores de imprenta (CMYK), que Kempt solo lee en JPEG.</translation>
    </message>
    <message>
        <source>The TIFF holds colours that Kempt does not read.</source>
        <translation>El TIFF contiene colores que Kempt no lee.</translation>
    </message>
    <message>
        <source>The TIFF holds numbers that are not of 8 or 16 bits.</source>
        <translation>El TIFF contiene números que no son de 8 o 16 bits.</translation>
    </message>
    <message>
        <source>The work was stopped before it began.</source>
        <translation>El trabajo se detuvo antes de empezar.</translation>
    </message>
    <message>
        <source>The gauge could not be drawn.</source>
        <translation>No se pudo dibujar la tarjeta o la hoja de medida.</translation>
    </message>
    <message>
        <source>Close other programs and try again.</source>
        <translation>Cierre otros programas e inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>The check line&apos;s length is not between 45 and 55 mm.</source>
        <translation>La línea de control no mide entre 45 y 55 mm.</translation>
    </message>
    <message>
        <source>Print at 100 %, measure the check line again and type its length in mm.</source>
        <translation>Imprima al 100 %, mida otra vez la línea de control y escriba su longitud en mm.</translation>
    </message>
    <message>
        <source>The program was started without fonts.</source>
        <translation>El programa se inició sin tipos de letra.</translation>
    </message>
    <message>
        <source>Start the program with QT_QPA_PLATFORM=offscreen.</source>
        <translation>Inicie el programa con QT_QPA_PLATFORM=offscreen.</translation>
    </message>
    <message>
        <source>There was not enough memory to draw the gauge.</source>
        <translation>No hubo memoria suficiente para dibujar la tarjeta o la hoja de medida.</translation>
    </message>
    <message>
        <source>The gauge could not be written to %1: %2.</source>
        <translation>La tarjeta o la hoja de medida no se pudo escribir en %1: %2.</translation>
    </message>
    <message>
        <source>A file that was there before is unchanged.</source>
        <translation>Un archivo que ya estaba ahí no ha cambiado.</translation>
    </message>
    <message>
        <source>Choose another folder or free some space.</source>
        <translation>Elija otra carpeta o libere espacio.</translation>
    </message>
    <message>
        <source>There is not enough memory for the picture.</source>
        <translation>No hay memoria suficiente para la imagen.</translation>
    </message>
    <message>
        <source>Ask for smaller photos.</source>
        <translation>Pida fotos más pequeñas.</translation>
    </message>
    <message>
        <source>There is no picture to paint.</source>
        <translation>No hay ninguna imagen que pintar.</translation>
    </message>
    <message>
        <source>Choose visits with photos of this view.</source>
        <translation>Elija visitas con fotos de esta vista.</translation>
    </message>
    <message>
        <source>The two pictures differ in size.</source>
        <translation>Las dos imágenes tienen tamaños distintos.</translation>
    </message>
    <message>
        <source>Align them first.</source>
        <translation>Superpóngalas antes.</translation>
    </message>
    <message>
        <source>The pictures are larger than 20000 pixels.</source>
        <translation>Las imágenes tienen más de 20000 píxeles.</translation>
    </message>
    <message>
        <source>Reduce them first.</source>
        <translation>Redúzcalas antes.</translation>
    </message>
    <message>
        <source>The picture could not be turned into PNG.</source>
        <translation>La imagen no se pudo convertir en PNG.</translation>
    </message>
    <message>
        <source>Try again.</source>
        <translation>Inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>Give the client a name first.</source>
        <translation>Ponga antes un nombre a la clienta.</translation>
    </message>
    <message>
        <source>There was not enough memory for the report.</source>
        <translation>No hubo memoria suficiente para el informe.</translation>
    </message>
    <message>
        <source>The report could not be produced.</source>
        <translation>No se pudo hacer el informe.</translation>
    </message>
    <message>
        <source>The report could not be written to %1: %2.</source>
        <translation>El informe no se pudo escribir en %1: %2.</translation>
    </message>
    <message>
        <source>A before/after picture needs two photos.</source>
        <translation>Una imagen de antes y después necesita dos fotos.</translation>
    </message>
    <message>
        <source>The longest side must be 100 to 8000 pixels.</source>
        <translation>El lado más largo debe tener de 100 a 8000 píxeles.</translation>
    </message>
    <message>
        <source>The member &quot;%1&quot; is not %2.</source>
        <translation>El miembro «%1» no es %2.</translation>
    </message>
    <message>
        <source>The day for which the record is asked is no date.</source>
        <translation>El día para el que se pide el historial no es una fecha.</translation>
    </message>
    <message>
        <source>The state is no JSON object (%1).</source>
        <translation>El estado no es un objeto JSON (%1).</translation>
    </message>
    <message>
        <source>Correct the file and try again.</source>
        <translation>Corrija el archivo e inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>The two photos show different views.</source>
        <translation>Las dos fotos muestran vistas distintas.</translation>
    </message>
    <message>
        <source>Marks are carried between shots of one view.</source>
        <translation>Las marcas se trasladan entre tomas de una misma vista.</translation>
    </message>
    <message>
        <source>The two photos belong to different clients.</source>
        <translation>Las dos fotos son de clientas distintas.</translation>
    </message>
    <message>
        <source>Nothing has been drawn on the photo that the marks should come from.</source>
        <translation>No hay nada dibujado en la foto de la que deberían venir las marcas.</translation>
    </message>
    <message>
        <source>Visit %1 belongs to another client.</source>
        <translation>La visita %1 es de otra clienta.</translation>
    </message>
    <message>
        <source>There is no photo of the %1 at the visit of %2.</source>
        <translation>No hay ninguna foto de la vista %1 en la visita del %2.</translation>
    </message>
    <message>
        <source>Choose another visit or view.</source>
        <translation>Elija otra visita u otra vista.</translation>
    </message>
    <message>
        <source>Only the two temples are shown beside each other.</source>
        <translation>Solo las dos sienes se muestran una junto a otra.</translation>
    </message>
    <message>
        <source>Choose one view.</source>
        <translation>Elija una vista.</translation>
    </message>
    <message>
        <source>A visit cannot be compared with itself.</source>
        <translation>Una visita no se puede comparar consigo misma.</translation>
    </message>
    <message>
        <source>Choose two visits.</source>
        <translation>Elija dos visitas.</translation>
    </message>
    <message>
        <source>A reminder; it clears no service.</source>
        <translation>Un recordatorio; no da vía libre a ningún servicio.</translation>
    </message>
    <message>
        <source>The days of the due list are none.</source>
        <translation>Los días de la lista de fechas no son válidos.</translation>
    </message>
    <message>
        <source>Give a date and days from 0 on.</source>
        <translation>Indique una fecha y días de 0 en adelante.</translation>
    </message>
    <message>
        <source>This photo cannot be worked on (%1).</source>
        <translation>Con esta foto no se puede trabajar (%1).</translation>
    </message>
    <message>
        <source>Take the photo again, or report the words in brackets.</source>
        <translation>Tome la foto de nuevo, o comunique las palabras entre paréntesis.</translation>
    </message>
    <message>
        <source>There is not enough memory for this photo.</source>
        <translation>No hay memoria suficiente para esta foto.</translation>
    </message>
    <message>
        <source>Close other programs, or take a smaller photo.</source>
        <translation>Cierre otros programas, o use una foto más pequeña.</translation>
    </message>
    <message>
        <source>Say into which folder to export.</source>
        <translation>Diga a qué carpeta exportar.</translation>
    </message>
    <message>
        <source>The book is unchanged; photos written so far stay in the folder.</source>
        <translation>El libro no ha cambiado; las fotos escritas hasta ahora siguen en la carpeta.</translation>
    </message>
    <message>
        <source>Install Debian&apos;s opencv-data, or draw the band by hand.</source>
        <translation>Instale opencv-data de Debian, o dibuje la banda a mano.</translation>
    </message>
    <message>
        <source>A band over the eyes has no size.</source>
        <translation>Una banda sobre los ojos no tiene tamaño.</translation>
    </message>
    <message>
        <source>Draw it anew.</source>
        <translation>Dibújela de nuevo.</translation>
    </message>
    <message>
        <source>Looked at: no eyes to hide.</source>
        <translation>Revisada: no hay ojos que ocultar.</translation>
    </message>
    <message>
        <source>Eyes hidden as you set it.</source>
        <translation>Ojos ocultos como usted lo fijó.</translation>
    </message>
    <message>
        <source>She agrees that her face is seen.</source>
        <translation>Ella acepta que se le vea la cara.</translation>
    </message>
    <message>
        <source>A face was found: its eyes are hidden. Look whether it fits.</source>
        <translation>Se encontró una cara: sus ojos están ocultos. Mire si queda bien.</translation>
    </message>
    <message>
        <source>No face was found. That is no proof that there is none: look yourself.</source>
        <translation>No se encontró ninguna cara. Eso no prueba que no la haya: mire usted.</translation>
    </message>
    <message>
        <source>She does not want her face seen, and nobody has looked at every one of these photos yet.</source>
        <translation>No quiere que se le vea la cara, y nadie ha mirado todavía todas estas fotos.</translation>
    </message>
    <message>
        <source>Nothing left the book.</source>
        <translation>Nada salió del libro.</translation>
    </message>
    <message>
        <source>Open the eyes in the pictures, set or confirm the bands, and try again.</source>
        <translation>Abra los ojos en las imágenes, ponga o confirme las bandas e inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>The file %1 has changed since it was shown.</source>
        <translation>El archivo %1 ha cambiado desde que se mostró.</translation>
    </message>
    <message>
        <source>It was not taken in.</source>
        <translation>No se incorporó.</translation>
    </message>
    <message>
        <source>Look at it again.</source>
        <translation>Mírelo otra vez.</translation>
    </message>
    <message>
        <source>There is no picture among the files and folders given.</source>
        <translation>No hay ninguna imagen entre los archivos y carpetas indicados.</translation>
    </message>
    <message>
        <source>Kempt takes JPEG, PNG, WebP, TIFF and HEIC.</source>
        <translation>Kempt acepta JPEG, PNG, WebP, TIFF y HEIC.</translation>
    </message>
    <message>
        <source>%1 photos were kept before that.</source>
        <translation>Antes de eso se guardaron %1 fotos.</translation>
    </message>
    <message>
        <source>The day of the %1, %2, is still to come.</source>
        <translation>El día (%1), %2, todavía no ha llegado.</translation>
    </message>
    <message>
        <source>Give a day until today.</source>
        <translation>Indique un día hasta hoy.</translation>
    </message>
    <message>
        <source>On that day %1 was answered with yes, which is kept for good.</source>
        <translation>Ese día se respondió que sí a %1, lo que se guarda para siempre.</translation>
    </message>
    <message>
        <source>If it was written down wrongly, erase it first: kempt client forget BOOK --answer %1.</source>
        <translation>Si se anotó mal, bórrelo antes: kempt client forget BOOK --answer %1.</translation>
    </message>
    <message>
        <source>How far back the record goes was not told yet.</source>
        <translation>Todavía no se dijo hasta dónde llega el historial.</translation>
    </message>
    <message>
        <source>Say since when every service is in it.</source>
        <translation>Diga desde cuándo contiene todos los servicios.</translation>
    </message>
    <message>
        <source>There is no kind of service called &apos;%1&apos;.</source>
        <translation>No hay ningún tipo de servicio llamado «%1».</translation>
    </message>
    <message>
        <source>There is no zone of the hair called &apos;%1&apos;.</source>
        <translation>No hay ninguna zona del cabello llamada «%1».</translation>
    </message>
    <message>
        <source>There is no grade for &apos;%1&apos;.</source>
        <translation>No hay ningún grado para «%1».</translation>
    </message>
    <message>
        <source>Grades are given for: %1.</source>
        <translation>Se ponen grados a: %1.</translation>
    </message>
    <message>
        <source>Nothing is done on a day that is still to come, %1.</source>
        <translation>Nada se hace en un día que todavía no ha llegado, %1.</translation>
    </message>
    <message>
        <source>Give the day on which it was done, or plan it for that day.</source>
        <translation>Indique el día en que se hizo, o prevéalo para ese día.</translation>
    </message>
    <message>
        <source>There is already a book at %1 that is not the demo&apos;s.</source>
        <translation>En %1 ya hay un libro que no es el de la demostración.</translation>
    </message>
    <message>
        <source>Choose another folder for the demo.</source>
        <translation>Elija otra carpeta para la demostración.</translation>
    </message>
    <message>
        <source>The demo&apos;s photos were not found.</source>
        <translation>No se encontraron las fotos de la demostración.</translation>
    </message>
    <message>
        <source>Set KEMPT_SAMPLES to the folder sample-images of Kempt.</source>
        <translation>Ponga en KEMPT_SAMPLES la carpeta sample-images de Kempt.</translation>
    </message>
    <message>
        <source>Say into which folder the demo goes.</source>
        <translation>Diga a qué carpeta va la demostración.</translation>
    </message>
    <message>
        <source>Graded twice, %1 grades agree with a weighted kappa of %2.</source>
        <translation>Puestos dos veces, %1 grados concuerdan con un kappa ponderado de %2.</translation>
    </message>
    <message>
        <source>Visit %1 is not among this client&apos;s visits.</source>
        <translation>La visita %1 no está entre las visitas de esta clienta.</translation>
    </message>
    <message>
        <source>This report was asked for without pictures.</source>
        <translation>Este informe se pidió sin imágenes.</translation>
    </message>
    <message>
        <source>%1 photos were measured before that.</source>
        <translation>Antes de eso se midieron %1 fotos.</translation>
    </message>
    <message>
        <source>Nothing has been drawn on this photo yet.</source>
        <translation>En esta foto todavía no hay nada dibujado.</translation>
    </message>
    <message>
        <source>Draw the edge line first.</source>
        <translation>Dibuje antes la línea del contorno.</translation>
    </message>
    <message>
        <source>The bytes of this photo are no longer those that were put into the book.</source>
        <translation>Los datos de esta foto ya no son los que se pusieron en el libro.</translation>
    </message>
    <message>
        <source>Its readings were left as they are.</source>
        <translation>Sus medidas se dejaron como estaban.</translation>
    </message>
    <message>
        <source>Check the book, and restore it from a backup.</source>
        <translation>Compruebe el libro y recupérelo de una copia de seguridad.</translation>
    </message>
    <message>
        <source>The marks hold no edge line, so there is nothing to measure.</source>
        <translation>Las marcas no contienen línea del contorno, así que no hay nada que medir.</translation>
    </message>
    <message>
        <source>The printer correction must lie between 0.9 and 1.1.</source>
        <translation>La corrección de la impresora debe estar entre 0,9 y 1,1.</translation>
    </message>
    <message>
        <source>Measure the 50 mm check line of the card again.</source>
        <translation>Mida otra vez la línea de control de 50 mm de la tarjeta.</translation>
    </message>
    <message>
        <source>The focal length must lie between 300 and 200 000 pixels, or be 0 for unknown.</source>
        <translation>La distancia focal debe estar entre 300 y 200 000 píxeles, o ser 0 si no se conoce.</translation>
    </message>
    <message>
        <source>The depths of the band must be positive and lie within the band.</source>
        <translation>Las profundidades de la franja deben ser positivas y quedar dentro de la franja.</translation>
    </message>
    <message>
        <source>The printer correction kept in the book is not between 0.9 and 1.1.</source>
        <translation>La corrección de la impresora guardada en el libro no está entre 0,9 y 1,1.</translation>
    </message>
    <message>
        <source>Measure the check line of the card and store it again.</source>
        <translation>Mida la línea de control de la tarjeta y guárdela de nuevo.</translation>
    </message>
    <message>
        <source>The client has not agreed that pictures leave the book.</source>
        <translation>La clienta no ha aceptado que las imágenes salgan del libro.</translation>
    </message>
    <message>
        <source>Ask her, and write down that she agrees.</source>
        <translation>Pregúntele, y anote que acepta.</translation>
    </message>
    <message>
        <source>The day of what is planned is no date.</source>
        <translation>El día de lo previsto no es una fecha.</translation>
    </message>
    <message>
        <source>In the plan, &quot;%1%2&quot; %3.</source>
        <translation>En el plan, «%1%2» %3.</translation>
    </message>
    <message>
        <source>The plan is no JSON object (%1).</source>
        <translation>El plan no es un objeto JSON (%1).</translation>
    </message>
    <message>
        <source>A stop speaks against it, see above.</source>
        <translation>Un alto habla en contra, véase arriba.</translation>
    </message>
    <message>
        <source>Neither more people nor rounds nor a milder strength would make one work.</source>
        <translation>Ni más personas ni rondas ni una fuerza más suave harían que uno funcionara.</translation>
    </message>
    <message>
        <source>Stops: on what is written down, none of the rules speaks one. That clears nothing.</source>
        <translation>Altos: según lo anotado, ninguna de las reglas dice ninguno. Eso no da vía libre a nada.</translation>
    </message>
    <message>
        <source>A PNG of the card takes 4 to 60 pixels per mm.</source>
        <translation>Un PNG de la tarjeta lleva de 4 a 60 píxeles por mm.</translation>
    </message>
    <message>
        <source>Say into which file to write.</source>
        <translation>Diga en qué archivo escribir.</translation>
    </message>
    <message>
        <source>The check line should measure about 50 mm; more than 10 % off is not a printer&apos;s tolerance.</source>
        <translation>La línea de control debería medir unos 50 mm; más de un 10 % de diferencia no es tolerancia de una impresora.</translation>
    </message>
    <message>
        <source>Print again at 100 % (&apos;actual size&apos;), without fitting to the page.</source>
        <translation>Imprima de nuevo al 100 % («tamaño real»), sin ajustar a la página.</translation>
    </message>
    <message>
        <source>There is no reading called &apos;%1&apos;.</source>
        <translation>No hay ninguna medida llamada «%1».</translation>
    </message>
    <message>
        <source>No earlier visit has a photo of the %1 with an edge line.</source>
        <translation>Ninguna visita anterior tiene una foto de la vista %1 con línea del contorno.</translation>
    </message>
    <message>
        <source>Draw the edge line on this photo.</source>
        <translation>Dibuje la línea del contorno en esta foto.</translation>
    </message>
    <message>
        <source>This entry has been changed since.</source>
        <translation>Esta entrada se ha cambiado desde entonces.</translation>
    </message>
    <message>
        <source>The book holds the newer one.</source>
        <translation>El libro tiene la más nueva.</translation>
    </message>
    <message>
        <source>Change it where it stands.</source>
        <translation>Cámbiela donde está.</translation>
    </message>
    <message>
        <source>There is no picture of two visits that can be shown.</source>
        <translation>No hay ninguna imagen de dos visitas que se pueda mostrar.</translation>
    </message>
    <message>
        <source>Ask for her consent, or look at the photos under “Eyes in the pictures”.</source>
        <translation>Pida su consentimiento, o mire las fotos en «Ojos en las imágenes».</translation>
    </message>
    <message>
        <source>There is one comparable visit only, so nothing can be said about a change yet.</source>
        <translation>Solo hay una visita comparable, así que todavía no se puede decir nada de un cambio.</translation>
    </message>
    <message>
        <source>There is no visit to compare.</source>
        <translation>No hay ninguna visita que comparar.</translation>
    </message>
    <message>
        <source>No shot gives this reading. %1 The other shots have reasons of their own.</source>
        <translation>Ninguna toma da esta medida. %1 Las otras tomas tienen motivos propios.</translation>
    </message>
    <message>
        <source>A point of %1 lies outside the photo, which is %2 x %3 pixels.</source>
        <translation>Un punto de %1 queda fuera de la foto, que tiene %2 x %3 píxeles.</translation>
    </message>
    <message>
        <source>Give points in pixels of the upright photo.</source>
        <translation>Indique los puntos en píxeles de la foto derecha.</translation>
    </message>
    <message>
        <source>The edge line has one point only.</source>
        <translation>La línea del contorno solo tiene un punto.</translation>
    </message>
    <message>
        <source>Draw it with two points or more.</source>
        <translation>Dibújela con dos puntos o más.</translation>
    </message>
    <message>
        <source>The edge line does not say on which side the hair is.</source>
        <translation>La línea del contorno no dice de qué lado está el cabello.</translation>
    </message>
    <message>
        <source>Tap once on the hair beside the line (hair_side).</source>
        <translation>Toque una vez el cabello junto a la línea (hair_side).</translation>
    </message>
    <message>
        <source>Joined strands need two points each, one on each strand.</source>
        <translation>Las hebras unidas necesitan dos puntos cada una, uno en cada hebra.</translation>
    </message>
    <message>
        <source>A scale needs two points and the distance between them in mm.</source>
        <translation>Una escala necesita dos puntos y la distancia entre ellos en mm.</translation>
    </message>
    <message>
        <source>This is not the SHA-256 of a photo.</source>
        <translation>Esto no es el SHA-256 de una foto.</translation>
    </message>
    <message>
        <source>%1 photos and more were kept before that.</source>
        <translation>Antes de eso se guardaron %1 fotos y más.</translation>
    </message>
    <message>
        <source>There is no photo to take in.</source>
        <translation>No hay ninguna foto que incorporar.</translation>
    </message>
    <message>
        <source>This visit belongs to another client.</source>
        <translation>Esta visita es de otra clienta.</translation>
    </message>
    <message>
        <source>Choose one of her own visits.</source>
        <translation>Elija una de sus propias visitas.</translation>
    </message>
    <message>
        <source>Marks have been drawn on one of these photos since.</source>
        <translation>Desde entonces se han dibujado marcas en una de estas fotos.</translation>
    </message>
    <message>
        <source>The photos stay in the record.</source>
        <translation>Las fotos se quedan en el historial.</translation>
    </message>
    <message>
        <source>Erase those that do not belong there on the visit&apos;s page.</source>
        <translation>Borre en la página de la visita las que no deban estar ahí.</translation>
    </message>
    <message>
        <source>The file of one of these photos is gone or changed: the book has the only copy.</source>
        <translation>El archivo de una de estas fotos ya no está o ha cambiado: el libro tiene la única copia.</translation>
    </message>
    <message>
        <source>Save the photo first, then erase it on the visit&apos;s page.</source>
        <translation>Guarde antes la foto y bórrela después en la página de la visita.</translation>
    </message>
    <message>
        <source>Not to scale: no gauge card in %1.</source>
        <translation>Sin escala: no hay tarjeta de medida en %1.</translation>
    </message>
    <message>
        <source>All others are laid over this photo.</source>
        <translation>Todas las demás se superponen a esta foto.</translation>
    </message>
    <message>
        <source>%1 It stands here by its edge line.</source>
        <translation>%1 Aquí se coloca por su línea del contorno.</translation>
    </message>
    <message>
        <source>The watched folder %1 cannot be read.</source>
        <translation>La carpeta vigilada %1 no se puede leer.</translation>
    </message>
    <message>
        <source>See whether its disk is there, or choose another folder in the settings.</source>
        <translation>Mire si su disco está ahí, o elija otra carpeta en los ajustes.</translation>
    </message>
    <message>
        <source>Check line, corrected for your printer. Measure it with a ruler between the middles of the two end strokes: it must be 50.0 mm now. Then set the check line&apos;s length in Kempt back to 50.0 mm for photos with this print.</source>
        <translation>Línea de control, corregida para su impresora. Mídala con una regla entre los centros de los dos trazos de los extremos: ahora debe medir 50,0 mm. Después vuelva a poner en Kempt 50,0 mm como longitud de la línea de control para las fotos con esta impresión.</translation>
    </message>
    <message>
        <source>Check line: 50 mm. Measure it with a ruler between the middles of the two end strokes, to a quarter of a millimetre. If it is not 50.0 mm, type the length you measured into Kempt: it corrects every reading for your printer.</source>
        <translation>Línea de control: 50 mm. Mídala con una regla entre los centros de los dos trazos de los extremos, al cuarto de milímetro. Si no mide 50,0 mm, escriba en Kempt la longitud que midió: así se corrige cada medida para su impresora.</translation>
    </message>
    <message>
        <source>Gauge card</source>
        <translation>Tarjeta de medida</translation>
    </message>
    <message>
        <source>Print at 100 % (actual size, no fitting to the page) on plain matt white paper, with colour effects and toner saving switched off.</source>
        <translation>Imprima al 100 % (tamaño real, sin ajustar a la página) en papel blanco mate sin recubrir, con los efectos de color y el ahorro de tóner desactivados.</translation>
    </message>
    <message>
        <source>Cut along the corner marks and glue the card flat on stiff white board. Lay it beside the hair, in the same plane and in the same light, all of it in the photo. Wipe or reprint it when it is stained: the grey steps are what the light is measured by. Use a fresh card for every client.</source>
        <translation>Corte por las marcas de las esquinas y pegue la tarjeta plana sobre cartón blanco rígido. Póngala junto al cabello, en el mismo plano y con la misma luz, entera dentro de la foto. Límpiela o imprímala de nuevo cuando se manche: con los pasos de gris se mide la luz. Use una tarjeta nueva para cada clienta.</translation>
    </message>
    <message>
        <source>Blue gauge sheet, for the ends of grey and white hair. Print in colour at 100 % (actual size) on matt white paper. Lay the ends on the blue, the gauge card beside them, all four corners in the photo.</source>
        <translation>Hoja de medida azul, para puntas de cabello claro. Imprima en color al 100 % (tamaño real) en papel blanco mate. Ponga las puntas en el azul, la tarjeta al lado y las cuatro esquinas en la foto.</translation>
    </message>
    <message>
        <source>Blue gauge sheet</source>
        <translation>Hoja de medida azul</translation>
    </message>
    <message>
        <source>Gauge sheet. Print at 100 % (actual size) on matt white paper. Lay ends or strands on the free part, the gauge card beside them, all four corners in the photo.</source>
        <translation>Hoja de medida. Imprima al 100 % (tamaño real) en papel blanco mate. Ponga las puntas o las hebras en la parte libre, la tarjeta de medida al lado y las cuatro esquinas dentro de la foto.</translation>
    </message>
    <message>
        <source>Gauge sheet</source>
        <translation>Hoja de medida</translation>
    </message>
    <message>
        <source>no picture</source>
        <translation>sin imagen</translation>
    </message>
    <message>
        <source>both pictures at this scale</source>
        <translation>ambas imágenes a esta escala</translation>
    </message>
    <message>
        <source>the picture is at this scale</source>
        <translation>la imagen está a esta escala</translation>
    </message>
    <message>
        <source>scale not known: to compare by eye only</source>
        <translation>escala desconocida: solo para comparar a ojo</translation>
    </message>
    <message>
        <source>Condition report, %1</source>
        <translation>Informe de estado, %1</translation>
    </message>
    <message>
        <source>Measuring is no diagnosis.</source>
        <translation>Medir no es diagnosticar.</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Página %1 de %2</translation>
    </message>
    <message>
        <source>Condition report: %1</source>
        <translation>Informe de estado: %1</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>hasta %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>beyond %1</source>
        <translation>a partir de %1</translation>
    </message>
    <message>
        <source>all of it</source>
        <translation>todo</translation>
    </message>
    <message>
        <source>%1 of %2 (%3)</source>
        <translation>%1 del %2 (%3)</translation>
    </message>
    <message>
        <source>perhaps %1 of %2 (%3)</source>
        <translation>quizá %1 del %2 (%3)</translation>
    </message>
    <message>
        <source>nothing on record</source>
        <translation>nada en el historial</translation>
    </message>
    <message>
        <source>Where: %1.</source>
        <translation>Dónde: %1.</translation>
    </message>
    <message>
        <source>Source: %1.</source>
        <translation>Fuente: %1.</translation>
    </message>
    <message>
        <source>What speaks against it, and what helps</source>
        <translation>Qué habla en contra y qué ayuda</translation>
    </message>
    <message>
        <source>A stop speaks against it; see above.</source>
        <translation>Un alto habla en contra; véase arriba.</translation>
    </message>
    <message>
        <source>Put on: %1.</source>
        <translation>Poner en: %1.</translation>
    </message>
    <message>
        <source>Keep off: %1.</source>
        <translation>No poner en: %1.</translation>
    </message>
    <message>
        <source>The record does not say what all of this hair has been through: find the line of demarcation by eye first.</source>
        <translation>El historial no dice por lo que ha pasado todo este cabello: busque antes a ojo la línea de demarcación.</translation>
    </message>
    <message>
        <source>What would work: %1</source>
        <translation>Qué serviría: %1</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>person %1</source>
        <translation>persona %1</translation>
    </message>
    <message>
        <source>beyond what is tolerated</source>
        <translation>más de lo tolerado</translation>
    </message>
    <message>
        <source>Rinse all</source>
        <translation>Aclarar todo</translation>
    </message>
    <message>
        <source>From the first stroke</source>
        <translation>Desde la primera pasada</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>Minutes it needs</source>
        <translation>Minutos que necesita</translation>
    </message>
    <message>
        <source>Minutes it carries it</source>
        <translation>Minutos que lo lleva</translation>
    </message>
    <message>
        <source>What this hair has been through</source>
        <translation>Por lo que ha pasado este cabello</translation>
    </message>
    <message>
        <source>Each service moves outward as the hair grows; lengths are from the scalp, as the hair is today.</source>
        <translation>Cada servicio se desplaza hacia fuera según crece el cabello; las longitudes son desde el cuero cabelludo, como está el cabello hoy.</translation>
    </message>
    <message>
        <source>What came before the record is not known.</source>
        <translation>No se sabe lo anterior al historial.</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Parte</translation>
    </message>
    <message>
        <source>On record, newest first</source>
        <translation>En el historial, lo más reciente primero</translation>
    </message>
    <message>
        <source>New growth since %1 of %2: %3. Source: %4.</source>
        <translation>Crecimiento nuevo desde %1 (%2): %3. Fuente: %4.</translation>
    </message>
    <message>
        <source>What is planned</source>
        <translation>Qué está previsto</translation>
    </message>
    <message>
        <source>What speaks against it on the record, and what to check first. Nothing here clears a service.</source>
        <translation>Qué habla en contra según el historial y qué comprobar antes. Nada de lo dicho aquí da vía libre a un servicio.</translation>
    </message>
    <message>
        <source>Check first (a stop may hang on the first %1)</source>
        <translation>Compruebe antes (de las %1 primeras puede depender un alto)</translation>
    </message>
    <message>
        <source>Check first</source>
        <translation>Compruebe antes</translation>
    </message>
    <message>
        <source>Always</source>
        <translation>Siempre</translation>
    </message>
    <message>
        <source>Care at home</source>
        <translation>Cuidados en casa</translation>
    </message>
    <message>
        <source>Sources: %1.</source>
        <translation>Fuentes: %1.</translation>
    </message>
    <message>
        <source>Next dates</source>
        <translation>Próximas fechas</translation>
    </message>
    <message>
        <source>has passed</source>
        <translation>ya pasó</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Before and after</source>
        <translation>Antes y después</translation>
    </message>
    <message>
        <source>There is no picture of this view that can be shown.</source>
        <translation>No hay ninguna imagen de esta vista que se pueda mostrar.</translation>
    </message>
    <message>
        <source>Over the visits</source>
        <translation>A lo largo de las visitas</translation>
    </message>
    <message>
        <source>no value</source>
        <translation>sin valor</translation>
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
        <source>%1 on %2</source>
        <translation>%1 el %2</translation>
    </message>
    <message>
        <source>Now %1. A share of the way cannot be given.</source>
        <translation>Ahora %1. No se puede dar una parte del camino.</translation>
    </message>
    <message>
        <source>Now %1: the target is reached.</source>
        <translation>Ahora %1: el objetivo está alcanzado.</translation>
    </message>
    <message>
        <source>Now %1: farther from the target than at the start.</source>
        <translation>Ahora %1: más lejos del objetivo que al empezar.</translation>
    </message>
    <message>
        <source>Now %1: %2 % of the way.</source>
        <translation>Ahora %1: %2 % del camino.</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Medidas</translation>
    </message>
    <message>
        <source>There is no reading that stands yet.</source>
        <translation>Todavía no hay ninguna medida válida.</translation>
    </message>
    <message>
        <source>In brackets the 95 % interval. A change counts only when it is larger than the smallest detectable change.</source>
        <translation>Entre paréntesis, el intervalo del 95 %. Un cambio solo cuenta cuando es mayor que el menor cambio apreciable.</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Medida</translation>
    </message>
    <message>
        <source>First</source>
        <translation>Primera</translation>
    </message>
    <message>
        <source>Latest</source>
        <translation>Última</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Cambio</translation>
    </message>
    <message>
        <source>Smallest detectable</source>
        <translation>Menor apreciable</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Veredicto</translation>
    </message>
    <message>
        <source>The way to the client&apos;s own targets</source>
        <translation>El camino a los objetivos de la clienta</translation>
    </message>
    <message>
        <source>start %1, %2</source>
        <translation>inicio %1, %2</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>objetivo %1</translation>
    </message>
    <message>
        <source>Services</source>
        <translation>Servicios</translation>
    </message>
    <message>
        <source>%1 (planned)</source>
        <translation>%1 (previsto)</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Service</source>
        <translation>Servicio</translation>
    </message>
    <message>
        <source>Where and how</source>
        <translation>Dónde y cómo</translation>
    </message>
    <message>
        <source>The stylist&apos;s grades</source>
        <translation>Los grados de la estilista</translation>
    </message>
    <message>
        <source>A judgement by eye from 0 to 4; 4 is hair or scalp at its best. The words beside each grade are the anchor of that step.</source>
        <translation>Un juicio a ojo de 0 a 4; 4 es el cabello o el cuero cabelludo en su mejor estado. Las palabras junto a cada grado son la descripción de ese paso.</translation>
    </message>
    <message>
        <source>%1 of 4</source>
        <translation>%1 de 4</translation>
    </message>
    <message>
        <source>again: %1</source>
        <translation>otra vez: %1</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zona</translation>
    </message>
    <message>
        <source>Quality</source>
        <translation>Cualidad</translation>
    </message>
    <message>
        <source>Grade</source>
        <translation>Grado</translation>
    </message>
    <message>
        <source>Anchor</source>
        <translation>Descripción</translation>
    </message>
    <message>
        <source>Left out, and why</source>
        <translation>Lo que quedó fuera y por qué</translation>
    </message>
    <message>
        <source>Nothing was refused.</source>
        <translation>No se rechazó nada.</translation>
    </message>
    <message>
        <source>View</source>
        <translation>Vista</translation>
    </message>
    <message>
        <source>Why, and what helps</source>
        <translation>Por qué y qué ayuda</translation>
    </message>
    <message>
        <source>How it was measured</source>
        <translation>Cómo se midió</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Precauciones</translation>
    </message>
    <message>
        <source>Every reading of every visit</source>
        <translation>Todas las medidas de todas las visitas</translation>
    </message>
    <message>
        <source>Refused: %1</source>
        <translation>Rechazada: %1</translation>
    </message>
    <message>
        <source>Shot</source>
        <translation>Toma</translation>
    </message>
    <message>
        <source>Value and 95 % interval</source>
        <translation>Valor e intervalo del 95 %</translation>
    </message>
    <message>
        <source>Method version</source>
        <translation>Versión del método</translation>
    </message>
    <message>
        <source>The photographs behind them</source>
        <translation>Las fotografías en que se basan</translation>
    </message>
    <message>
        <source>SHA-256 of each original file, kept untouched in the book.</source>
        <translation>SHA-256 de cada archivo original, guardado intacto en el libro.</translation>
    </message>
    <message>
        <source>No visits yet</source>
        <translation>Aún no hay visitas</translation>
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
        <source>Condition report</source>
        <translation>Informe de estado</translation>
    </message>
    <message>
        <source>Prepared by %1</source>
        <translation>Elaborado por %1</translation>
    </message>
    <message>
        <source>Report of %1, %2</source>
        <translation>Informe del %1, %2</translation>
    </message>
    <message>
        <source>client&apos;s copy</source>
        <translation>copia para la clienta</translation>
    </message>
    <message>
        <source>record copy</source>
        <translation>copia para el archivo</translation>
    </message>
    <message>
        <source>In short</source>
        <translation>En resumen</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>cambiado</translation>
    </message>
    <message>
        <source>Photographs are taken from standard positions with a printed gauge card of known size lying flat in the plane of the hair. The card gives the scale, the tilt of the camera and the light; a photo that is blurred, too coarse, tilted or badly lit is refused at once, with the reason.</source>
        <translation>Las fotografías se toman desde posiciones fijas con una tarjeta de medida impresa, de tamaño conocido, plana y en el plano del cabello. La tarjeta da la escala, la inclinación de la cámara y la luz; una foto movida, demasiado basta, inclinada o mal iluminada se rechaza en el acto y se dice por qué.</translation>
    </message>
    <message>
        <source>The stylist draws the edge line where the first hairs leave the scalp. The band of scalp behind that line is straightened and read. Where hair and scalp cannot be told apart, no figure is given.</source>
        <translation>La estilista dibuja la línea del contorno donde los primeros cabellos salen del cuero cabelludo. La franja de cuero cabelludo detrás de esa línea se endereza y se mide. Donde el cabello y el cuero cabelludo no se distinguen, no se da ninguna cifra.</translation>
    </message>
    <message>
        <source>The figures in brackets are the 95 % interval of each value: what sampling along the edge, the scale and the light leave uncertain.</source>
        <translation>Las cifras entre paréntesis son el intervalo del 95 % de cada valor: lo que dejan incierto el muestreo a lo largo del contorno, la escala y la luz.</translation>
    </message>
    <message>
        <source>The smallest detectable change is the largest difference that repeat photographs of unchanged hair would show in 19 of 20 cases. A change beyond it is called improved or worse. Anything smaller is called no detectable change: it may be real, but these photographs cannot tell.</source>
        <translation>El menor cambio apreciable es la mayor diferencia que en 19 de 20 casos mostrarían fotografías repetidas de un cabello que no ha cambiado. Un cambio mayor se llama mejor o peor. Todo lo que es menor se llama sin cambio apreciable: puede ser real, pero estas fotografías no lo pueden decir.</translation>
    </message>
    <message>
        <source>Visits are compared only when the hair was in the same state (wet or dry, styled or not, product or none). There is no overall score: each target has a bar of its own.</source>
        <translation>Las visitas solo se comparan cuando el cabello estaba en el mismo estado (mojado o seco, peinado o no, con producto o sin él). No hay puntuación global: cada objetivo tiene su propia barra.</translation>
    </message>
    <message>
        <source>Card: %1.</source>
        <translation>Tarjeta: %1.</translation>
    </message>
    <message>
        <source>Measured with %1, measuring methods version %2.</source>
        <translation>Medido con %1, versión %2 de los métodos de medida.</translation>
    </message>
    <message>
        <source>Chemical, colour and heat services are for professional use. Follow the maker&apos;s directions and the local licensing rules; where this report differs from them, they stand.</source>
        <translation>Los servicios químicos, de color y de calor son para uso profesional. Siga las instrucciones del fabricante y las normas locales de licencia; donde este informe difiera de ellas, valen ellas.</translation>
    </message>
    <message>
        <source>Make a strand test before a chemical service, and a patch test as long before it as the maker asks.</source>
        <translation>Haga una prueba de mechón antes de un servicio químico, y una prueba de alergia con la antelación que pide el fabricante.</translation>
    </message>
    <message>
        <source>Stop at once at burning, stinging or irritation and rinse as the maker directs.</source>
        <translation>Pare de inmediato si hay ardor, escozor o irritación, y aclare como indica el fabricante.</translation>
    </message>
    <message>
        <source>See a doctor about sudden or patchy hair loss, pain, scarring, sores or any disease of the scalp.</source>
        <translation>Consulte a un médico ante una caída del cabello repentina o por zonas, dolor, cicatrices, llagas o cualquier enfermedad del cuero cabelludo.</translation>
    </message>
    <message>
        <source>Measuring is no diagnosis. The report says what photographs show; it does not say why, and it never says that a service is safe.</source>
        <translation>Medir no es diagnosticar. El informe dice lo que muestran las fotografías; no dice por qué, y nunca dice que un servicio sea seguro.</translation>
    </message>
    <message>
        <source>%1: no readings yet.</source>
        <translation>%1: aún sin medidas.</translation>
    </message>
    <message>
        <source>%1: one visit, %2, %3.</source>
        <translation>%1: una visita, %2, %3.</translation>
    </message>
    <message>
        <source>%1: %2 visits, %3 on %4, %5 on %6.</source>
        <translation>%1: %2 visitas, %3 el %4, %5 el %6.</translation>
    </message>
    <message>
        <source>Not comparable: %1.</source>
        <translation>No comparables: %1.</translation>
    </message>
    <message>
        <source>Changes of less than %1 cannot be told from chance.</source>
        <translation>Los cambios de menos de %1 no se distinguen del azar.</translation>
    </message>
    <message>
        <source>Trend: %1.</source>
        <translation>Tendencia: %1.</translation>
    </message>
    <message>
        <source>Target: %1.</source>
        <translation>Objetivo: %1.</translation>
    </message>
    <message>
        <source>Target foreseen: %1.</source>
        <translation>Objetivo previsto: %1.</translation>
    </message>
    <message>
        <source>visit with its 95 % interval; small dots: single shots</source>
        <translation>visita con su intervalo del 95 %; puntos pequeños: tomas sueltas</translation>
    </message>
    <message>
        <source>visit with its 95 % interval</source>
        <translation>visita con su intervalo del 95 %</translation>
    </message>
    <message>
        <source>no detectable change from the first visit (±%1)</source>
        <translation>sin cambio apreciable desde la primera visita (±%1)</translation>
    </message>
    <message>
        <source>no detectable change from the last visit (±%1)</source>
        <translation>sin cambio apreciable desde la última visita (±%1)</translation>
    </message>
    <message>
        <source>trend: %1</source>
        <translation>tendencia: %1</translation>
    </message>
    <message>
        <source>target foreseen: %1</source>
        <translation>objetivo previsto: %1</translation>
    </message>
    <message>
        <source>No readings yet. Photograph this view with the gauge card, and its chart begins here.</source>
        <translation>Aún no hay medidas. Fotografíe esta vista con la tarjeta de medida y aquí empezará su gráfico.</translation>
    </message>
    <message>
        <source>not within five years</source>
        <translation>no antes de cinco años</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>hasta %1</translation>
    </message>
    <message>
        <source>%1 at the earliest, no latest date</source>
        <translation>%1 como pronto, sin fecha límite</translation>
    </message>
    <message>
        <source>down %1 a month</source>
        <translation>baja %1 al mes</translation>
    </message>
    <message>
        <source>up %1 a month</source>
        <translation>sube %1 al mes</translation>
    </message>
    <message>
        <source>%1 (95 %: %2 to %3)</source>
        <translation>%1 (95 %: %2 a %3)</translation>
    </message>
    <message>
        <source>before/after picture</source>
        <translation>imagen de antes y después</translation>
    </message>
    <message>
        <source>photo %1</source>
        <translation>foto %1</translation>
    </message>
    <message>
        <source>%1 (mirrored)</source>
        <translation>%1 (reflejada)</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 y %2</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>de %1 a %2</translation>
    </message>
    <message>
        <source>the scalp</source>
        <translation>el cuero cabelludo</translation>
    </message>
    <message>
        <source>the ends</source>
        <translation>las puntas</translation>
    </message>
    <message>
        <source>left %1</source>
        <translation>dejó %1</translation>
    </message>
    <message>
        <source>%1 of at most %2 min</source>
        <translation>%1 de %2 min como mucho</translation>
    </message>
    <message>
        <source>at most %1 min</source>
        <translation>%1 min como mucho</translation>
    </message>
    <message>
        <source>1 pass</source>
        <translation>1 pasada</translation>
    </message>
    <message>
        <source>%1 passes</source>
        <translation>%1 pasadas</translation>
    </message>
    <message>
        <source>strand test %1</source>
        <translation>prueba de mechón %1</translation>
    </message>
    <message>
        <source>patch test %1</source>
        <translation>prueba de alergia %1</translation>
    </message>
    <message>
        <source>patch test on %1</source>
        <translation>prueba de alergia del %1</translation>
    </message>
    <message>
        <source>patch test %1 on %2</source>
        <translation>prueba de alergia (%1) del %2</translation>
    </message>
    <message>
        <source>at home</source>
        <translation>en casa</translation>
    </message>
    <message>
        <source>by a stylist</source>
        <translation>por una estilista</translation>
    </message>
    <message>
        <source>with a reaction</source>
        <translation>con reacción</translation>
    </message>
    <message>
        <source>no reaction</source>
        <translation>sin reacción</translation>
    </message>
    <message>
        <source>line at %1 on %2</source>
        <translation>línea a %1 el %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, %2 and %3</source>
        <translation>%1, %2 y %3</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>previsto</translation>
    </message>
    <message>
        <source>no gauge card; the scale comes from two points a known distance apart</source>
        <translation>sin tarjeta de medida; la escala sale de dos puntos a una distancia conocida</translation>
    </message>
    <message>
        <source>no photo shows the gauge card</source>
        <translation>ninguna foto muestra la tarjeta de medida</translation>
    </message>
    <message>
        <source>gauge card, printer correction not set</source>
        <translation>tarjeta de medida, corrección de la impresora sin fijar</translation>
    </message>
    <message>
        <source>gauge card, printed at %1 % of its size</source>
        <translation>tarjeta de medida, impresa al %1 % de su tamaño</translation>
    </message>
    <message>
        <source>%1; some photos have their scale from two points</source>
        <translation>%1; algunas fotos tienen la escala de dos puntos</translation>
    </message>
    <message>
        <source>No order of work keeps within what is tolerated.</source>
        <translation>Ningún orden de trabajo se mantiene dentro de lo tolerado.</translation>
    </message>
    <message>
        <source>in</source>
        <translation>pulg.</translation>
    </message>
    <message>
        <source>The files that faces are found with are not installed (%1).</source>
        <translation>Los archivos con los que se buscan caras no están instalados (%1).</translation>
    </message>
    <message>
        <source>Client %1</source>
        <translation>Clienta %1</translation>
    </message>
    <message>
        <source>Likeliest %1.</source>
        <translation>Lo más probable, el %1.</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Antes</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Después</translation>
    </message>
    <message>
        <source>whole head</source>
        <translation>toda la cabeza</translation>
    </message>
    <message>
        <source>from the scalp to %1</source>
        <translation>del cuero cabelludo a %1</translation>
    </message>
    <message>
        <source>from the scalp to the ends</source>
        <translation>del cuero cabelludo a las puntas</translation>
    </message>
    <message>
        <source>from %1 to the ends</source>
        <translation>de %1 a las puntas</translation>
    </message>
    <message>
        <source>from the scalp to %1, %2</source>
        <translation>del cuero cabelludo a %1, %2</translation>
    </message>
    <message>
        <source>from the scalp to the ends, %1</source>
        <translation>del cuero cabelludo a las puntas, %1</translation>
    </message>
    <message>
        <source>the rest common practice, no source</source>
        <translation>el resto, práctica común, sin fuente</translation>
    </message>
    <message>
        <source>the length of 12 mm common practice, no source</source>
        <translation>la longitud de 12 mm, práctica común, sin fuente</translation>
    </message>
    <message>
        <source>measured on this client, with %1</source>
        <translation>medido en esta clienta, con %1</translation>
    </message>
    <message>
        <source>line of demarcation measured by tape on %1</source>
        <translation>línea de demarcación medida con cinta el %1</translation>
    </message>
    <message>
        <source>line of demarcation measured on a photo of %1</source>
        <translation>línea de demarcación medida en una foto del %1</translation>
    </message>
    <message>
        <source>line of demarcation measured by tape on %1, carried on at the rate of growth: %2</source>
        <translation>línea de demarcación medida con cinta el %1, continuada con la velocidad de crecimiento: %2</translation>
    </message>
    <message>
        <source>line of demarcation measured on a photo of %1, carried on at the rate of growth: %2</source>
        <translation>línea de demarcación medida en una foto del %1, continuada con la velocidad de crecimiento: %2</translation>
    </message>
    <message>
        <source>%1, three groups in equal parts</source>
        <translation>%1, tres grupos a partes iguales</translation>
    </message>
    <message>
        <source>%1, African</source>
        <translation>%1, africano</translation>
    </message>
    <message>
        <source>Billero &amp; Miteva 2018, Clin Cosmet Investig Dermatol 11:149-59</source>
        <translation>Billero &amp; Miteva 2018, Clin Cosmet Investig Dermatol 11:149-59</translation>
    </message>
    <message>
        <source>Khumalo 2008, J Am Acad Dermatol 59:432-8</source>
        <translation>Khumalo 2008, J Am Acad Dermatol 59:432-8</translation>
    </message>
    <message>
        <source>Khumalo 2010, J Am Acad Dermatol 62:402-8</source>
        <translation>Khumalo 2010, J Am Acad Dermatol 62:402-8</translation>
    </message>
    <message>
        <source>McDonald 2017, J Am Acad Dermatol</source>
        <translation>McDonald 2017, J Am Acad Dermatol</translation>
    </message>
    <message>
        <source>Sishi 2019, S Afr Med J 109:941-6</source>
        <translation>Sishi 2019, S Afr Med J 109:941-6</translation>
    </message>
    <message>
        <source>Thermochim Acta 661:78-83, 2018</source>
        <translation>Thermochim Acta 661:78-83, 2018</translation>
    </message>
    <message>
        <source>Wasko 2008, Arch Dermatol 144:759-62</source>
        <translation>Wasko 2008, Arch Dermatol 144:759-62</translation>
    </message>
    <message>
        <source>Loussouarn, El Rawadi &amp; Genain 2005</source>
        <translation>Loussouarn, El Rawadi &amp; Genain 2005</translation>
    </message>
    <message>
        <source>Loussouarn 2001</source>
        <translation>Loussouarn 2001</translation>
    </message>
    <message>
        <source>J Cosmet Sci 62(2), 2011, conference paper on hot irons</source>
        <translation>J Cosmet Sci 62(2), 2011, ponencia sobre planchas calientes</translation>
    </message>
    <message>
        <source>Regulation (EC) No 1223/2009, Annex III, label of hair dyes, as told by the Finnish safety agency</source>
        <translation>Reglamento (CE) n.º 1223/2009, anexo III, etiqueta de los tintes para el cabello, según la agencia finlandesa de seguridad</translation>
    </message>
    <message>
        <source>Taiwan Food and Drug Administration, advice on perms and dyes, news of 2020</source>
        <translation>Taiwan Food and Drug Administration, consejos sobre permanentes y tintes, noticia de 2020</translation>
    </message>
    <message>
        <source>US Food and Drug Administration, FDA Consumer 2001 and consumer advice on straighteners</source>
        <translation>US Food and Drug Administration, FDA Consumer 2001 y consejos al consumidor sobre alisadores</translation>
    </message>
    <message>
        <source>US Food and Drug Administration, consumer pages on hair dyes (archived 2004 and 2012)</source>
        <translation>US Food and Drug Administration, páginas para el consumidor sobre tintes del cabello (archivadas en 2004 y 2012)</translation>
    </message>
    <message>
        <source>US Food and Drug Administration, fact sheet on smoothing products that release formaldehyde, 2021</source>
        <translation>US Food and Drug Administration, ficha sobre productos de alisado que liberan formaldehído, 2021</translation>
    </message>
    <message>
        <source>US Food and Drug Administration, list of reactions to hair products</source>
        <translation>US Food and Drug Administration, lista de reacciones a productos para el cabello</translation>
    </message>
    <message>
        <source>US Occupational Safety and Health Administration, hazard alert on smoothing products, 2011, and 29 CFR 1910.1048</source>
        <translation>US Occupational Safety and Health Administration, alerta de peligro sobre productos de alisado, 2011, y 29 CFR 1910.1048</translation>
    </message>
    <message>
        <source>dermatologists&apos; public tips on curled and relaxed hair</source>
        <translation>consejos públicos de dermatólogos sobre el cabello rizado y alisado</translation>
    </message>
    <message>
        <source>dermatology clinic advice, talk of 2011</source>
        <translation>consejo de una clínica de dermatología, charla de 2011</translation>
    </message>
    <message>
        <source>dermatology clinic leaflet on relaxers</source>
        <translation>folleto de una clínica de dermatología sobre alisadores</translation>
    </message>
    <message>
        <source>hairdressing school curriculum pages and an examination item</source>
        <translation>páginas del programa de una escuela de peluquería y una pregunta de examen</translation>
    </message>
    <message>
        <source>laboratory study of tightly curled hair ironed at 185 and 220 °C, as summed up on the web</source>
        <translation>estudio de laboratorio de cabello muy rizado planchado a 185 y 220 °C, según un resumen en la web</translation>
    </message>
    <message>
        <source>The photos can only be laid over each other to about %1 mm at the edge line.</source>
        <translation>Las fotos solo se pueden superponer con unos %1 mm de margen en la línea del contorno.</translation>
    </message>
    <message>
        <source>patch test %1 passed</source>
        <translation>prueba de alergia (%1) superada</translation>
    </message>
    <message>
        <source>patch test %1 failed</source>
        <translation>prueba de alergia (%1) no superada</translation>
    </message>
    <message>
        <source>patch test on %1 passed</source>
        <translation>prueba de alergia del %1 superada</translation>
    </message>
    <message>
        <source>patch test on %1 failed</source>
        <translation>prueba de alergia del %1 no superada</translation>
    </message>
    <message>
        <source>patch test %1 on %2 passed</source>
        <translation>prueba de alergia (%1) del %2 superada</translation>
    </message>
    <message>
        <source>patch test %1 on %2 failed</source>
        <translation>prueba de alergia (%1) del %2 no superada</translation>
    </message>
    <message>
        <source>inner elbow</source>
        <translation>pliegue del codo</translation>
    </message>
    <message>
        <source>behind the ear</source>
        <translation>detrás de la oreja</translation>
    </message>
    <message>
        <source>behind the left ear</source>
        <translation>detrás de la oreja izquierda</translation>
    </message>
    <message>
        <source>behind the right ear</source>
        <translation>detrás de la oreja derecha</translation>
    </message>
    <message>
        <source>Applying the %1 takes %2</source>
        <translation>Aplicar en %1 lleva %2</translation>
    </message>
    <message>
        <source>From the first stroke at the %1 to the last at the %2 it takes %3</source>
        <translation>Desde la primera pasada en %1 hasta la última en %2 pasan %3</translation>
    </message>
    <message>
        <source>%1 minutes</source>
        <translation>%1 minutos</translation>
    </message>
    <message>
        <source>%1 minute</source>
        <translation>%1 minuto</translation>
    </message>
    <message>
        <source>Shot %1: %2</source>
        <translation>Toma %1: %2</translation>
    </message>
    <message>
        <source>Single strands need a closer photo: 20 pixels per mm or more.</source>
        <translation>Para hebras sueltas hace falta una foto más cercana: 20 píxeles por mm o más.</translation>
    </message>
    <message>
        <source>Over %1 visits %2 rose by %3 a month (95 %: %4 to %5; p %6): %7.</source>
        <translation>En %1 visitas, %2: subió %3 al mes (95 %: de %4 a %5; p %6): %7.</translation>
    </message>
    <message>
        <source>Over %1 visits %2 fell by %3 a month (95 %: %4 to %5; p %6): %7.</source>
        <translation>En %1 visitas, %2: bajó %3 al mes (95 %: de %4 a %5; p %6): %7.</translation>
    </message>
    <message>
        <source>Over %1 visits %2 rose by %3 a month (p %4): %5.</source>
        <translation>En %1 visitas, %2: subió %3 al mes (p %4): %5.</translation>
    </message>
    <message>
        <source>Over %1 visits %2 fell by %3 a month (p %4): %5.</source>
        <translation>En %1 visitas, %2: bajó %3 al mes (p %4): %5.</translation>
    </message>
    <message>
        <source>Over %1 visits %2 shows no sure rise or fall: %3 to %4 a month (95 %; p = %5).</source>
        <translation>En %1 visitas, %2: ni subida ni bajada segura, de %3 a %4 al mes (95 %; p = %5).</translation>
    </message>
    <message>
        <source>more than chance</source>
        <translation>más que azar</translation>
    </message>
    <message>
        <source>it may be chance</source>
        <translation>puede ser azar</translation>
    </message>
    <message>
        <source>more than chance, but all of it is less than the %1 that two visits can tell apart</source>
        <translation>más que azar, pero en total es menos que los %1 que dos visitas pueden distinguir</translation>
    </message>
    <message>
        <source>How far shots scatter is known from this client&apos;s own repeat shots at %1 visits.</source>
        <translation>Cuánto se dispersan las tomas se sabe por las tomas repetidas de esta clienta en %1 visitas.</translation>
    </message>
    <message>
        <source>How far shots scatter is known from 1 repeat shot of this client, filled up from the other repeat shots in the book.</source>
        <translation>Cuánto se dispersan las tomas se sabe por 1 toma repetida de esta clienta, completada con las demás tomas repetidas del libro.</translation>
    </message>
    <message>
        <source>How far shots scatter is known from 1 repeat shot of this client, filled up from the other repeat shots in the book and the documented default.</source>
        <translation>Cuánto se dispersan las tomas se sabe por 1 toma repetida de esta clienta, completada con las demás tomas repetidas del libro y el valor documentado.</translation>
    </message>
    <message>
        <source>How far shots scatter is known from 1 repeat shot of this client and the documented default.</source>
        <translation>Cuánto se dispersan las tomas se sabe por 1 toma repetida de esta clienta y el valor documentado.</translation>
    </message>
    <message>
        <source>How far shots scatter is known from %1 repeat shots of this client, filled up from the other repeat shots in the book.</source>
        <translation>Cuánto se dispersan las tomas se sabe por %1 tomas repetidas de esta clienta, completadas con las demás tomas repetidas del libro.</translation>
    </message>
    <message>
        <source>How far shots scatter is known from %1 repeat shots of this client, filled up from the other repeat shots in the book and the documented default.</source>
        <translation>Cuánto se dispersan las tomas se sabe por %1 tomas repetidas de esta clienta, completadas con las demás tomas repetidas del libro y el valor documentado.</translation>
    </message>
    <message>
        <source>How far shots scatter is known from %1 repeat shots of this client and the documented default.</source>
        <translation>Cuánto se dispersan las tomas se sabe por %1 tomas repetidas de esta clienta y el valor documentado.</translation>
    </message>
    <message>
        <source>This client has no repeat shots of this view; how far shots scatter is known from the other repeat shots in the book.</source>
        <translation>Esta clienta no tiene tomas repetidas de esta vista; cuánto se dispersan las tomas se sabe por las demás tomas repetidas del libro.</translation>
    </message>
    <message>
        <source>This client has no repeat shots of this view; how far shots scatter is known from the other repeat shots in the book and the documented default.</source>
        <translation>Esta clienta no tiene tomas repetidas de esta vista; cuánto se dispersan las tomas se sabe por las demás tomas repetidas del libro y el valor documentado.</translation>
    </message>
    <message>
        <source>This client has no repeat shots of this view; how far shots scatter is known from the documented default.</source>
        <translation>Esta clienta no tiene tomas repetidas de esta vista; cuánto se dispersan las tomas se sabe por el valor documentado.</translation>
    </message>
    <message>
        <source>What repeat shots cannot show, light and position that differ from visit to visit, is added to it: %1 (standard deviation).</source>
        <translation>Se le suma lo que las tomas repetidas no muestran, luz y posición que cambian de una visita a otra: %1 (desviación típica).</translation>
    </message>
    <message>
        <source>What repeat shots cannot show is added to it: light and position that differ from visit to visit, and what these photos leave open, strands of mixed colour or a highlight: %1 (standard deviation).</source>
        <translation>Se le suma lo que las tomas repetidas no muestran: luz y posición que cambian de una visita a otra, y lo que estas fotos dejan abierto, hebras de color mezclado o un brillo: %1 (desviación típica).</translation>
    </message>
    <message>
        <source>%1: edge coverage %2 (%3 to %4); %5: edge coverage %6 (%7 to %8)</source>
        <translation>%1: cobertura del contorno %2 (%3 a %4); %5: cobertura del contorno %6 (%7 a %8)</translation>
    </message>
    <message>
        <source>%1: edge coverage %2 (%3 to %4)</source>
        <translation>%1: cobertura del contorno %2 (%3 a %4)</translation>
    </message>
    <message>
        <source>The pace over the visits is the Theil-Sen slope, the middle of the slopes between any two of them; p is that of a Mann-Kendall test, and below 0.05 the pace is called more than chance.</source>
        <translation>El ritmo a lo largo de las visitas es la pendiente de Theil-Sen, la mediana de las pendientes entre cada dos de ellas; p es la de una prueba de Mann-Kendall, y por debajo de 0,05 el ritmo se llama más que azar.</translation>
    </message>
</context>
</TS>
