import type { SpanishWords } from './spanish-words.ts'

/** Requirements that every run has, their limits and choices, and the cautions under every page. */
export const requirementWords: SpanishWords = {
  sentences: {
    'The post carries an offset block.': 'El poste lleva un bloque separador.',
    'The post carries no offset block.': 'El poste no lleva bloque separador.',
    'An offset block': 'Un bloque separador',
    'No offset block': 'Sin bloque separador',
    'Look between rail and post.': 'Mire entre la baranda y el poste.',
    'Without the block a wheel snags on the post.': 'Sin el bloque, una rueda se engancha en el poste.',
    'A block here keeps the post from breaking away as tested.':
      'Aquí un bloque impide que el poste se rompa como en el ensayo.',
    'Fit the offset block.': 'Coloque el bloque separador.',
    'Take the offset block out and fix the rail as the manual shows.':
      'Quite el bloque separador y fije la baranda como muestra el manual.',
    'Another kind of post': 'Otra clase de poste',
    'Damaged, rotten or cut': 'Dañado, podrido o cortado',
    'Look at the whole post; at a wood post tap it and look for rot at the ground.':
      'Mire el poste entero; si es de madera, golpéelo y busque pudrición a ras de suelo.',
    'Only the post that was tested bends or breaks as tested.':
      'Solo el poste ensayado se dobla o se rompe como en el ensayo.',
    'The rail is bolted to the post, without a washer on its face.':
      'La baranda está atornillada al poste, sin arandela en su cara.',
    'The rail is not bolted to the post.': 'La baranda no está atornillada al poste.',
    'Bolted, no washer on the face': 'Atornillada, sin arandela en la cara',
    'Bolted with a washer on the face': 'Atornillada con arandela en la cara',
    'Not bolted': 'Sin atornillar',
    Bolted: 'Atornillada',
    'Look at the face of the rail in front of the post.': 'Mire la cara de la baranda frente al poste.',
    'A loose rail drops; a washer keeps the rail from coming off the post as tested.':
      'Una baranda suelta se cae; una arandela impide que se suelte del poste como en el ensayo.',
    'A bolt here holds the rail back when the head has to move.':
      'Aquí un tornillo retiene la baranda cuando la cabeza tiene que moverse.',
    'Bolt the rail to the post with a button head and no washer on the face.':
      'Atornille la baranda al poste con cabeza de botón y sin arandela en la cara.',
    'Take the bolt out.': 'Quite el tornillo.',
    'The hinge bolt is on the side toward the head.': 'El perno de bisagra está del lado de la cabeza.',
    'The hinge bolt is on the side away from the head.': 'El perno de bisagra está del lado opuesto a la cabeza.',
    'Toward the head': 'Hacia la cabeza',
    'Away from the head': 'Al lado opuesto de la cabeza',
    'Look at the joint of upper and lower post from the side.':
      'Mire de lado la unión del poste superior y el inferior.',
    'On the wrong side the post does not fold as tested.':
      'Del lado equivocado el poste no se pliega como en el ensayo.',
    'Move the hinge bolt to the side toward the head.': 'Pase el perno de bisagra al lado de la cabeza.',
    'Move the hinge bolt to the side away from the head.': 'Pase el perno de bisagra al lado opuesto a la cabeza.',
    upper: 'superiores',
    lower: 'inferiores',
    'toward the head': 'hacia la cabeza',
    'away from the head': 'al lado opuesto de la cabeza',
    'Not held in slots': 'No sujeta en ranuras',
    'Look at the back of the rail where it meets the post.':
      'Mire la parte de atrás de la baranda donde toca el poste.',
    'The slot set fixes the rail height and lets the rail come free.':
      'El juego de ranuras fija la altura de la baranda y la deja soltarse.',
    Slotted: 'Con ranuras',
    'No slots': 'Sin ranuras',
    'Look along the middle of the panel.': 'Mire a lo largo del centro del panel.',
    'The slots make the panel bend at a lower force when the end is hit, and leave its strength in tension; a plain panel resists far more.':
      'Las ranuras hacen que el panel se doble con menos fuerza cuando golpean el extremo, y le dejan su resistencia a la tracción; un panel sin ranuras resiste mucho más.',
    'Another length': 'Otra longitud',
    'Measure from splice centre to splice centre, not from end to end of the sheet: a panel is about a foot longer overall.':
      'Mida de centro de empalme a centro de empalme, no de punta a punta de la chapa: un panel mide en total cerca de un pie más.',
    'A panel of another length moves every splice beyond it.':
      'Un panel de otra longitud desplaza todos los empalmes que siguen.',
    'Two panels lie one in the other (nested) here.': 'Aquí hay dos paneles, uno dentro del otro.',
    Nested: 'Doble',
    Single: 'Sencillo',
    'Look at the edge of the rail from below.': 'Mire el borde de la baranda desde abajo.',
    'The rail spans a gap here and was tested doubled.': 'Aquí la baranda salva un hueco y se ensayó doble.',
    'Add the second panel.': 'Añada el segundo panel.',
    'The splice lies at a post.': 'El empalme está en un poste.',
    'The splice lies midway between two posts.': 'El empalme está a media distancia entre dos postes.',
    'At a post': 'En un poste',
    'Midway between posts': 'A media distancia entre postes',
    Elsewhere: 'En otro sitio',
    'Stand square to the rail and look where the splice bolts are.':
      'Póngase de frente a la baranda y mire dónde están los tornillos del empalme.',
    'The system was tested with its splices there; elsewhere the rail tears at the splice.':
      'El sistema se ensayó con sus empalmes ahí; en otro sitio la baranda se rasga por el empalme.',
    'Bring the splice where it belongs by exchanging panels.': 'Lleve el empalme a su sitio cambiando paneles.',
    'The upstream panel lies on the traffic side of the splice, so that its edge points away from adjacent traffic.':
      'El panel de aguas arriba queda del lado del tránsito en el empalme, de modo que su borde no apunta al tránsito contiguo.',
    'The downstream panel lies on the traffic side of the splice, toward the terminal end.':
      'El panel de aguas abajo queda del lado del tránsito en el empalme, hacia el extremo del terminal.',
    'Upstream panel on the traffic side': 'Panel de aguas arriba del lado del tránsito',
    'Downstream panel on the traffic side': 'Panel de aguas abajo del lado del tránsito',
    'Look at the face from upstream: no edge may point at you.':
      'Mire la cara desde aguas arriba: ningún borde puede apuntarle a usted.',
    'An edge that points at traffic catches a vehicle and opens the splice.':
      'Un borde que apunta al tránsito engancha un vehículo y abre el empalme.',
    'Take the splice apart and lap it the other way.': 'Desarme el empalme y solápelo al revés.',
    'Too low, a vehicle goes over the rail; too high, it goes under or snags.':
      'Demasiado baja, un vehículo pasa por encima; demasiado alta, pasa por debajo o se engancha.',
    'Raise or lower the rail within its limits.': 'Suba o baje la baranda dentro de sus límites.',
    'A vehicle passes over the stub after the post breaks away; a taller one snags its floor.':
      'Un vehículo pasa sobre el muñón cuando el poste se rompe; uno más alto le engancha el piso.',
    'Lower the post or reset it.': 'Baje el poste o vuelva a colocarlo.',
    'Wider, the rail pockets; and the bolts no longer meet the slots.':
      'Más separados, la baranda se embolsa, y los tornillos ya no coinciden con las ranuras.',
    'Move the post. The rail slot may not be enlarged in the field.':
      'Mueva el poste; la ranura de la baranda no se puede agrandar en obra.',
    'The terminal was tested with straight panels; a curved one buckles out of line when the head is struck.':
      'El terminal se ensayó con paneles rectos; uno curvo se pandea fuera de línea cuando golpean la cabeza.',
    'Bring the posts into a straight line between the ends of the panel.':
      'Ponga los postes en línea recta entre los extremos del panel.',
    'The flare takes the head away from traffic and was tested at this offset.':
      'El abocinado aleja la cabeza del tránsito y se ensayó con esta separación.',
    'The rail slot may not be enlarged in the field.': 'La ranura de la baranda no se puede agrandar en obra.',
    'Move the post.': 'Mueva el poste.',
    'No curb': 'Sin bordillo',
    'A curb': 'Un bordillo',
    'Look along the edge of the pavement in front of the gap.':
      'Mire a lo largo del borde del pavimento delante del hueco.',
    'Coming over a curb a vehicle loads the rail across a gap otherwise than in the test without one; plain rail has torn there.':
      'Al pasar sobre un bordillo, un vehículo carga la baranda del hueco de otra manera que en el ensayo sin él; ahí se ha rasgado la baranda corriente.',
    'Lay the run out again and say that there is a curb: the sheet does not allow this gap at a curb.':
      'Disponga el tramo de nuevo y diga que hay un bordillo: la ficha no permite este hueco junto a un bordillo.',
    'A new slot without zinc': 'Una ranura nueva sin zinc',
    'A new slot of another size, rough or torch-cut': 'Una ranura nueva de otro tamaño, áspera o cortada con soplete',
    'The old slot enlarged': 'La ranura vieja agrandada',
    'Look at the face and the back of the rail at the moved post and where the post would have stood.':
      'Mire la cara y la espalda de la baranda en el poste movido y donde habría estado el poste.',
    'A rough or enlarged slot is where the rail tears under load; bare steel rusts there.':
      'Por una ranura áspera o agrandada se rasga la baranda bajo carga; ahí se oxida el acero sin zinc.',
    'limits not stated': 'sin límites indicados',
    'steel tape': 'cinta de acero',
    'digital level': 'nivel digital',
    'angle gauge': 'medidor de ángulos',
    'torque wrench': 'llave dinamométrica',
    'cable tension gauge': 'medidor de tensión de cables',
    'counted by eye': 'contado a la vista',
    'tape and level': 'cinta y nivel',
    'string line and tape': 'hilo y cinta',
    'total station': 'estación total',
    'GNSS receiver, fast static or real-time': 'receptor GNSS, estático rápido o en tiempo real',
    'not stated': 'no se dice',
    // The cautions under every page.
    "This is not a design and not a crash test. The agency's standard drawing and specification and the terminal maker's manual in force at letting govern; where they differ from what is shown here, stop and ask the engineer.":
      'Esto no es un diseño ni un ensayo de choque. Rigen el plano estándar y la especificación de la agencia y el manual del fabricante del terminal vigentes en la adjudicación; donde difieran de lo que se muestra aquí, deténgase y pregunte al ingeniero.',
    'The shipped hardware sheets are examples; replace them by sheets written from the documents in force. A limit marked "from memory" has not been checked against any document.':
      'Las fichas de herrajes incluidas son ejemplos; cámbielas por fichas hechas con los documentos vigentes. Un límite marcado "de memoria" no se cotejó con ningún documento.',
    'Acceptance is signed by a person, an engineer licensed where the law asks for one; this tool signs nothing.':
      'La aceptación la firma una persona, un ingeniero con licencia donde la ley lo pide; esta herramienta no firma nada.',
    'A value within the uncertainty of its measurement is not a pass.':
      'Un valor dentro de la incertidumbre de su medición no es un cumplimiento.',
    'Call the one-call utility service before any post is driven or pulled, and wait for its marks.':
      'Llame al servicio de localización de servicios enterrados antes de hincar o arrancar un poste, y espere sus marcas.',
    'Work behind the traffic control that the plan calls for; never kneel in or beside a live lane to read a height.':
      'Trabaje tras el control de tránsito que pide el plano; nunca se arrodille en un carril abierto ni junto a él para leer una altura.',
    "An anchor cable is under load, driven posts and cut edges injure: wear the protection the work calls for. An exposed end or open gap at day's end must be protected.":
      'Un cable de anclaje está bajo carga, los postes hincados y los bordes cortados hieren: use la protección que pide el trabajo. Un extremo expuesto o un hueco abierto al final del día tiene que protegerse.',
    terminal: 'terminal',
    'flared terminal': 'terminal abocinado',
    'trailing anchor': 'anclaje de salida',
    'buried end': 'extremo enterrado',
    'bridge end': 'extremo de puente',
  },
  patterns: [
    ['post #', 'poste #'],
    ['panel #', 'panel #'],
    ['splice #', 'empalme #'],
    ['at least #, # nominal', 'al menos #, nominal #'],
    ['at most #, # nominal', 'a lo más #, nominal #'],
    ['# to #, # nominal', '# a #, nominal #'],
    ['at least #', 'al menos #'],
    ['at most #', 'a lo más #'],
    ['The post is a $.', 'El poste es un $.'],
    ['A $, sound', 'Un $, sano'],
    ['Replace the post by a $.', 'Cambie el poste por un $.'],
    [
      'The rail is held in the open $ slots of the post, on its side $.',
      'La baranda está sujeta en las ranuras $ abiertas del poste, en su lado $.',
    ],
    ['In the $ slots, on the other side', 'En las ranuras $, del otro lado'],
    ['In the $ slots, $', 'En las ranuras $, $'],
    ['In the $ slots', 'En las ranuras $'],
    ['Set the rail in the $ slots on the side $.', 'Ponga la baranda en las ranuras $ del lado $.'],
    [
      'The panel is the $, $ long, with a row of 4-in slots along it.',
      'El panel es el $, de $ de largo, con una fila de ranuras de 4 in a lo largo.',
    ],
    ['Replace the panel by the $, $ long.', 'Cambie el panel por el $, de $ de largo.'],
    [
      'The last panel before the run is $ long, which brings the splices where they belong.',
      'El último panel antes del tramo mide $, lo que lleva los empalmes a su sitio.',
    ],
    ['The panel is $ long, splice to splice.', 'El panel mide $, de empalme a empalme.'],
    ['Replace the panel by one of $.', 'Cambie el panel por uno de $.'],
    [
      'The top of the rail stands $ above finish grade.',
      'La parte superior de la baranda está $ sobre la rasante terminada.',
    ],
    [
      'The lower post (stub) stands $ above finish grade.',
      'El poste inferior (muñón) sobresale $ de la rasante terminada.',
    ],
    [
      'The posts stand $ apart, centre to centre (a post is left out for $).',
      'Los postes están a $ uno de otro, de centro a centro (se omite un poste por $).',
    ],
    [
      'The posts stand $ apart, centre to centre ($ posts are left out for $).',
      'Los postes están a $ uno de otro, de centro a centro (se omiten $ postes por $).',
    ],
    [
      'No slot may be enlarged in the field: post #, which is moved by the layout, gets a new one, as its own requirement says.',
      'Ninguna ranura se puede agrandar en obra: el poste #, que la disposición mueve, recibe una nueva, como dice su propio requisito.',
    ],
    [
      'No curb stands before the rail where posts are left out for $.',
      'No hay bordillo delante de la baranda donde se omiten postes por $.',
    ],
    [
      'Lay the run out again and say that there is a curb: # of rail round the gap then has to be doubled.',
      'Disponga el tramo de nuevo y diga que hay un bordillo: entonces hay que doblar # de baranda junto al hueco.',
    ],
    [
      'The rail is bolted to the moved post through a new slot of # x #, cut smooth and sprayed with zinc; the old slot stays as it was made.',
      'La baranda está atornillada al poste movido por una ranura nueva de # x #, de corte liso y rociada con zinc; la ranura vieja queda como se hizo.',
    ],
    ['A new slot of # x #, smooth, zinc-sprayed', 'Una ranura nueva de # x #, lisa, rociada con zinc'],
    [
      'Spray a bare slot with zinc. Where the slot is rough, of another size or an old one enlarged, replace the panel and cut a new slot of # x #, smooth and sprayed with zinc.',
      'Rocíe con zinc la ranura que no lo tenga. Donde la ranura sea áspera, de otro tamaño o una vieja agrandada, cambie el panel y corte una ranura nueva de # x #, lisa y rociada con zinc.',
    ],
    ['The posts stand $ apart, centre to centre.', 'Los postes están a $ uno de otro, de centro a centro.'],
    [
      'The panel is straight: its middle lies $ from the line between its ends.',
      'El panel es recto: su centro está $ de la línea entre sus extremos.',
    ],
    [
      'Post 1 stands $ off the line of the run, away from traffic.',
      'El poste 1 está $ fuera de la línea del tramo, del lado opuesto al tránsito.',
    ],
    [
      'Post 1 stands $ off the flared line of the run before the end, carried on, away from traffic.',
      'El poste 1 está $ fuera de la línea abocinada del tramo antes del extremo, prolongada, del lado opuesto al tránsito.',
    ],
    [
      'Move the end so that it stands $ off the line, away from traffic.',
      'Mueva el extremo hasta que quede a $ de la línea, del lado opuesto al tránsito.',
    ],
    [
      '$; or pull one tape from post 1 and read every post on it.',
      '$; o tienda una sola cinta desde el poste 1 y lea en ella cada poste.',
    ],
    [
      '$; or read the lateral offset of every post from one string, and say the side of each.',
      '$; o lea desde un solo hilo la distancia lateral de cada poste, y diga el lado de cada una.',
    ],
    [
      '$; sight along the run or stretch a string past at least two of its posts, and say the side.',
      '$; mire a lo largo del tramo o tienda un hilo junto a dos de sus postes por lo menos, y diga el lado.',
    ],
    ['# in to # in', '# in a # in'],
    ['# mm to # mm', '# mm a # mm'],
    ['# ft to # ft', '# ft a # ft'],
  ],
}
