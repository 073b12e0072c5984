import type { SheetText } from '../../core/hardware/sheet-text.ts'

/**
 * The Spanish of a text of the sheets that shipped before sheets carried their texts in more than one language: runs hold
 * them as they are, for ever. Undefined for any other sheet. Nothing is added here; a sheet speaks for itself.
 */
export const landedText = ({ sheet, version, own }: SheetText): string | undefined =>
  editions.includes(`${sheet} ${version}`) ? landedTexts[own] : undefined

const editions: readonly string[] = [
  'w-beam-midspan-31 1.1.0',
  'w-beam-post-splice-27-3-4 1.1.0',
  'flared-terminal-31 1.1.0',
  'flared-terminal-27-3-4 1.1.0',
  'tangent-terminal-31 1.1.0',
  'trailing-anchor-31 1.1.0',
  'trailing-anchor-27-3-4 1.1.0',
  'buried-end-31 1.0.0',
  'bridge-end-31 1.0.0',
]

/** By what stands in the sheet. */
export const landedTexts: Readonly<Record<string, string>> = {
  'Clear loose gravel and grass to firm finish grade. Hold a level square across the top of the rail and measure down to the ground below the face; where the face stands within 2 ft of the shoulder break, measure to the shoulder slope extended under the rail with a straightedge.':
    'Quite grava suelta y pasto hasta la rasante firme. Sostenga un nivel a escuadra sobre la baranda y mida hacia abajo hasta el suelo bajo la cara; donde la cara esté a menos de 2 ft del quiebre del acotamiento, mida hasta la pendiente del acotamiento prolongada bajo la baranda con una regla.',
  'Centre of post to centre of post along the rail': 'De centro de poste a centro de poste a lo largo de la baranda',
  'Eight splice bolts stand in every splice, heads on the traffic side, nuts tight.':
    'Cada empalme lleva ocho tornillos, cabezas del lado del tránsito, tuercas apretadas.',
  'Eight bolts, tight': 'Ocho tornillos, apretados',
  'A bolt is missing or loose': 'Falta un tornillo o está flojo',
  'Count the button heads on the face, then feel every nut on the back with a wrench.':
    'Cuente las cabezas de botón en la cara y después pruebe con llave cada tuerca de atrás.',
  'The splice carries the tension of the whole run; with a bolt missing the rail tears there.':
    'El empalme lleva la tensión de todo el tramo; si falta un tornillo, la baranda se rasga ahí.',
  'Set the missing 5/8 x 1 1/4 in splice bolts with recessed nuts and tighten all eight.':
    'Ponga los tornillos de empalme de 5/8 x 1 1/4 in que faltan, con tuercas rebajadas, y apriete los ocho.',
  'The rail from this splice to the next has no tear, no flattened part and no hole that was not made in the factory.':
    'De este empalme al siguiente la baranda no tiene rasgón, parte aplastada ni agujero que no sea de fábrica.',
  'The rail from this splice to the next has no tear, no flattened part and no hole but those made in the factory and the new slot of a moved post.':
    'De este empalme al siguiente la baranda no tiene rasgón, parte aplastada ni más agujeros que los de fábrica y la ranura nueva de un poste movido.',
  Sound: 'Sana',
  'Torn, flattened or with a hole': 'Rasgada, aplastada o con un agujero',
  'Walk the face and run a hand along the top and bottom edges.':
    'Recorra la cara y pase la mano por los bordes de arriba y de abajo.',
  'A tear or torch hole is where the rail parts under load.':
    'Por un rasgón o un agujero de soplete se parte la baranda bajo carga.',
  'Replace the panel.': 'Cambie el panel.',
  'Middle of the panel from a string between its ends': 'Centro del panel desde un hilo entre sus extremos',
  'Top of the lower post above finish grade, at the higher side of the ground':
    'Parte superior del poste inferior sobre la rasante terminada, del lado más alto del suelo',
  'Square from the line of the run, extended, to the face of rail at post 1':
    'A escuadra desde la línea prolongada del tramo hasta la cara de la baranda en el poste 1',
  'The impact head is fixed to post 1 in two places, upper and lower hole, snug, in the upper hole set.':
    'La cabeza de impacto está fija al poste 1 en dos sitios, agujero superior e inferior, ajustada, en el juego de agujeros superior.',
  'Both fasteners, upper hole set, snug': 'Las dos fijaciones, juego superior, ajustadas',
  'Both fasteners, lower hole set': 'Las dos fijaciones, juego inferior',
  'One fastener missing or loose': 'Falta una fijación o está floja',
  'Not fixed': 'Sin fijar',
  'Look at both fasteners from behind post 1 and try them by hand; count the holes from the top.':
    'Mire las dos fijaciones desde detrás del poste 1 y pruébelas con la mano; cuente los agujeros desde arriba.',
  'A head in the wrong holes or loose turns away or spears when it is struck.':
    'Una cabeza en otros agujeros o floja se gira o atraviesa el vehículo cuando la golpean.',
  'Move the head to the upper hole set and set both fasteners snug.':
    'Pase la cabeza al juego de agujeros superior y ajuste las dos fijaciones.',
  'The bearing plate stands with its 5-in side up and its 3-in side down.':
    'La placa de apoyo está con su lado de 5 in hacia arriba y el de 3 in hacia abajo.',
  '5-in side up': 'Lado de 5 in arriba',
  '3-in side up': 'Lado de 3 in arriba',
  'No plate': 'Sin placa',
  'Measure from the cable hole to the upper and to the lower edge of the plate.':
    'Mida desde el agujero del cable hasta el borde superior y el inferior de la placa.',
  'Upside down, the plate bears on the wrong part of the post and the cable does not come free as tested.':
    'Al revés, la placa apoya en otra parte del poste y el cable no se suelta como en el ensayo.',
  'Slacken the cable, turn the plate so that the 5-in side is up, tighten, and fix the retainer.':
    'Afloje el cable, gire la placa con el lado de 5 in arriba, apriete y fije el retén.',
  'A retainer keeps the bearing plate from turning.': 'Un retén impide que gire la placa de apoyo.',
  'Retainer in place': 'Retén puesto',
  'No retainer; the plate can turn': 'Sin retén; la placa puede girar',
  'Try to turn the plate by hand.': 'Intente girar la placa con la mano.',
  'Plates turn over time until they hang upside down.': 'Con el tiempo las placas giran hasta quedar al revés.',
  'Fit the retainer that the manual shows.': 'Coloque el retén que muestra el manual.',
  'The anchor cable is taut: pulled by hand it moves no more than 1 in.':
    'El cable de anclaje está tenso: tirado con la mano no se mueve más de 1 in.',
  'Movement of the cable by hand, halfway along its free length':
    'Movimiento del cable con la mano, a mitad de su largo libre',
  'Grip the cable halfway and pull it up and down; measure the whole travel.':
    'Tome el cable a la mitad y muévalo arriba y abajo; mida todo el recorrido.',
  'A slack cable lets the rail run out before it holds.': 'Un cable flojo deja correr la baranda antes de retenerla.',
  'Hold the cable from turning and tighten its nuts until it moves no more than 1 in; do not twist the cable.':
    'Impida que el cable gire y apriete sus tuercas hasta que no se mueva más de 1 in; no tuerza el cable.',
  "The cable anchor bracket's bolts are secure and the bracket sits on the shoulders of the bolts.":
    'Los tornillos del soporte del cable están firmes y el soporte asienta en los hombros de los tornillos.',
  'Seated on the shoulders, bolts secure': 'Asentado en los hombros, tornillos firmes',
  'Not seated, or a bolt loose or missing': 'Sin asentar, o un tornillo flojo o ausente',
  'Look along the back of the rail; push the bracket by hand.':
    'Mire a lo largo de la parte de atrás de la baranda; empuje el soporte con la mano.',
  'A bracket off its shoulders slips and leaves the cable slack when it should hold.':
    'Un soporte fuera de los hombros resbala y deja flojo el cable cuando tiene que retener.',
  'Slacken the cable, seat the bracket on the shoulders of all bolts, tighten bolts and cable.':
    'Afloje el cable, asiente el soporte en los hombros de todos los tornillos, apriete tornillos y cable.',
  'The opening of the cable anchor bracket is toward the head.':
    'La abertura del soporte del cable mira hacia la cabeza.',
  'Opening toward the head': 'Abertura hacia la cabeza',
  'Opening away from the head': 'Abertura al lado opuesto de la cabeza',
  'Look at the back of panel 1.': 'Mire la parte de atrás del panel 1.',
  'Reversed, it does not release as tested.': 'Al revés, no se suelta como en el ensayo.',
  'Take the bracket off and set it with its opening toward the head.':
    'Quite el soporte y póngalo con la abertura hacia la cabeza.',
  'The lower post was seen in place, undamaged and as the manual shows, before the ground was closed round it.':
    'Se vio el poste inferior en su sitio, sin daño y como muestra el manual, antes de cerrar el suelo a su alrededor.',
  'Seen, as the manual shows': 'Visto, como muestra el manual',
  'Differs from the manual or damaged': 'Difiere del manual o está dañado',
  'Look into the open hole and take a photo before backfilling.':
    'Mire en el hoyo abierto y tome una foto antes de rellenar.',
  'Nobody can see it again once it is covered, and the whole anchorage hangs on it.':
    'Nadie lo puede ver una vez cubierto, y de él depende todo el anclaje.',
  'Open the ground at the post and set the lower post as the manual shows.':
    'Abra el suelo junto al poste y coloque el poste inferior como muestra el manual.',
  "The person who installs or inspects has the maker's manual and checklist in force at hand, and knows the device.":
    'Quien instala o inspecciona tiene a mano el manual y la lista vigentes del fabricante, y conoce el dispositivo.',
  'Ask to see the manual; compare its edition with the device.':
    'Pida ver el manual; compare su edición con el dispositivo.',
  'Devices that look alike differ in the parts that matter.':
    'Dispositivos que parecen iguales difieren en las partes que importan.',
  "Get the maker's manual in force before going on.": 'Consiga el manual vigente del fabricante antes de seguir.',
  'The impact head is fixed to post 1 in two places, upper and lower hole, snug, in the lower hole set.':
    'La cabeza de impacto está fija al poste 1 en dos sitios, agujero superior e inferior, ajustada, en el juego de agujeros inferior.',
  'Both fasteners, lower hole set, snug': 'Las dos fijaciones, juego inferior, ajustadas',
  'Both fasteners, upper hole set': 'Las dos fijaciones, juego superior',
  'Move the head to the lower hole set and set both fasteners snug.':
    'Pase la cabeza al juego de agujeros inferior y ajuste las dos fijaciones.',
  'The rail stands fully in the head; the head is level, square to the rail and not twisted.':
    'La baranda entra por completo en la cabeza; la cabeza está a nivel, a escuadra con la baranda y sin torcer.',
  'Rail fully in, head square and level': 'Baranda toda dentro, cabeza a escuadra y a nivel',
  'Rail not fully in, or head tilted or twisted': 'Baranda no toda dentro, o cabeza inclinada o torcida',
  'Sight along the rail from downstream and look into the mouth of the head.':
    'Mire a lo largo de la baranda desde aguas abajo y dentro de la boca de la cabeza.',
  'A head out of line does not feed the rail and may spear.':
    'Una cabeza fuera de línea no deja pasar la baranda y puede atravesar el vehículo.',
  'Set the head level and square with the rail fully in, then fix it as the manual shows.':
    'Ponga la cabeza a nivel y a escuadra con la baranda toda dentro, y fíjela como muestra el manual.',
  'A ground strut joins the soil tubes of posts 1 and 2, bolted at both ends.':
    'Un puntal a ras de suelo une los tubos de los postes 1 y 2, atornillado en los dos extremos.',
  'In place, bolted at both ends': 'En su sitio, atornillado en los dos extremos',
  'Missing or loose': 'Falta o está flojo',
  'Look before the ground is closed; take a photo.': 'Mire antes de cerrar el suelo; tome una foto.',
  'Two tubes act as one only through the strut.': 'Solo con el puntal trabajan los dos tubos como uno.',
  'Fit the strut and bolt both ends.': 'Coloque el puntal y atornille los dos extremos.',
  'From the roadway grade carried across to the rail, until the rail is past the ditch bottom':
    'Desde la rasante de la calzada llevada hasta la baranda, hasta que la baranda pasa el fondo de la cuneta',
  'Square from the line of the run, extended, to the face of rail where it enters the slope':
    'A escuadra desde la línea prolongada del tramo hasta la cara de la baranda donde entra en el talud',
  'The anchorage in the slope was seen as drawn before it was covered.':
    'Se vio el anclaje en el talud como está dibujado antes de cubrirlo.',
  'Seen, as drawn': 'Visto, como está dibujado',
  'Differs from the drawing': 'Difiere del dibujo',
  'Look into the open cut and take a photo before backfilling.':
    'Mire en el corte abierto y tome una foto antes de rellenar.',
  'The whole rail is held here and nobody can see it again.':
    'Aquí se sujeta toda la baranda, y nadie lo puede ver después.',
  'Open the slope and build the anchorage as drawn.': 'Abra el talud y haga el anclaje como está dibujado.',
  'A rub rail stands wherever the gap below the rail is more than 18 in.':
    'Hay una baranda inferior donde el hueco bajo la baranda es de más de 18 in.',
  'There, or the gap is 18 in or less everywhere': 'La hay, o el hueco es de 18 in o menos en todas partes',
  'Gap over 18 in without a rub rail': 'Hueco de más de 18 in sin baranda inferior',
  'Measure the gap below the rail where it crosses the ditch.': 'Mida el hueco bajo la baranda donde cruza la cuneta.',
  'A vehicle wedges under the rail.': 'Un vehículo se encaja bajo la baranda.',
  'Add the rub rail.': 'Añada la baranda inferior.',
  'The end shoe is bolted to the bridge with every bolt of the drawing, and laps by the rule for adjacent traffic.':
    'La zapata de extremo está atornillada al puente con todos los tornillos del dibujo, y solapa según la regla del tránsito contiguo.',
  'All bolts, lap right': 'Todos los tornillos, solape bien',
  'A bolt missing, or lapped the wrong way': 'Falta un tornillo, o solapada al revés',
  'Count the bolts against the drawing.': 'Cuente los tornillos según el dibujo.',
  'The rail hands its whole tension to the bridge here.': 'Aquí la baranda entrega toda su tensión al puente.',
  'Set the missing bolts, or lap the shoe the other way.':
    'Ponga los tornillos que faltan, o solape la zapata al revés.',
  'The W-to-thrie piece is 10 gauge, with a single bolt at its centre post.':
    'La pieza de W a tres ondas es de calibre 10, con un solo tornillo en su poste central.',
  '10 gauge, one bolt at its centre post': 'Calibre 10, un tornillo en su poste central',
  'Another gauge, or bolted otherwise': 'Otro calibre, o atornillada de otro modo',
  'Read the stamp on the piece; look at the bolt.': 'Lea el sello de la pieza; mire el tornillo.',
  'A 12-gauge piece was not what was tested.': 'No se ensayó una pieza de calibre 12.',
  'Replace the piece by a 10-gauge one.': 'Cambie la pieza por una de calibre 10.',
  'standard post': 'poste estándar',
  'breakaway post': 'poste frangible',
  'breakaway wood post': 'poste frangible de madera',
  'breakaway wood post with holes for a 27 3/4 in rail':
    'poste frangible de madera con agujeros para una baranda de 27 3/4 in',
  'hinged breakaway post': 'poste frangible con bisagra',
  'anchor in the slope': 'anclaje en el talud',
  'transition post': 'poste de transición',
  'slotted end panel': 'panel de extremo con ranuras',
  'end panel': 'panel de extremo',
  'adapter panel': 'panel adaptador',
  'W-to-thrie transition and bridge end, 31 in': 'Transición de doble a triple onda y extremo de puente, 31 in',
  'W-to-thrie piece': 'pieza de doble a triple onda',
  'thrie-beam panel, nested': 'panel de triple onda, doble',
  'W-to-thrie piece, 10 gauge': 'pieza de doble a triple onda, calibre 10',
  Rail: 'Baranda',
  'End shoe': 'Zapata de extremo',
  panel: 'panel',
  "Example of our own; replace it by a sheet written from the maker's manual in force and the agency's standard drawing.":
    'Ejemplo propio; cámbielo por una ficha hecha con el manual vigente del fabricante y el plano estándar de la agencia.',
  'End buried in the backslope, 31 in': 'Extremo enterrado en el talud, 31 in',
  'Rub rail': 'Baranda inferior',
  'Anchor in the slope': 'Anclaje en el talud',
  'Flared cable-anchored terminal, 27 3/4 in': 'Terminal abocinado anclado con cable, 27 3/4 in',
  Person: 'Persona',
  'Lower posts': 'Postes inferiores',
  'Impact head': 'Cabeza de impacto',
  'Anchor cable': 'Cable de anclaje',
  'Cable anchor bracket': 'Soporte del cable',
  'Bearing plate': 'Placa de apoyo',
  'Flared cable-anchored terminal, 31 in': 'Terminal abocinado anclado con cable, 31 in',
  'Tangent energy-absorbing terminal, 31 in': 'Terminal tangente que absorbe energía, 31 in',
  'Trailing-end anchor, 27 3/4 in': 'Anclaje de salida, 27 3/4 in',
  'Ground strut': 'Puntal a ras de suelo',
  'Trailing-end anchor, 31 in': 'Anclaje de salida, 31 in',
  'W-beam, splices midway between posts, 31 in': 'Baranda de doble onda, empalmes a media distancia, 31 in',
  'W-beam, splices at posts, 27 3/4 in': 'Baranda de doble onda, empalmes en los postes, 27 3/4 in',
}
