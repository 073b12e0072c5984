import type { SpanishWords } from './spanish-words.ts'

/** Notes to a need, and why a need cannot be computed. */
export const needWords: SpanishWords = {
  sentences: {
    'A flare is generally not used on a curve.': 'En curva por lo general no se usa abocinado.',
    'The barrier stands inside the clear zone of opposing traffic: its end there has to be crashworthy.':
      'La barrera está dentro de la zona despejada del tránsito contrario: su extremo de ese lado tiene que estar ensayado a choque.',
    'No opposing traffic: the departure end needs an anchor, not a crashworthy end.':
      'Sin tránsito contrario: el extremo de salida necesita un anclaje, no un extremo ensayado a choque.',
    'The barrier stands outside the clear zone of opposing traffic: its end there needs an anchor, not a crashworthy end.':
      'La barrera está fuera de la zona despejada del tránsito contrario: su extremo de ese lado necesita un anclaje, no un extremo ensayado a choque.',
    'Opposing traffic is not judged: give medianWidth to have it judged.':
      'El tránsito contrario no se juzga: dé el ancho de mediana (medianWidth) para que se juzgue.',
    'Opposing traffic is not judged: hazards in a median are shielded from it by a run of its own.':
      'El tránsito contrario no se juzga: los peligros en una mediana se protegen de él con un tramo propio.',
    hazard: 'peligro',
    barrier: 'barrera',
    'inside shy line': 'dentro de la línea de recelo',
    'beyond shy line': 'más allá de la línea de recelo',
    inside: 'interior',
    outside: 'exterior',
    'inside and outside': 'interior y exterior',
    path: 'trayectoria',
    edge: 'borde',
    'a lower speed': 'una velocidad menor',
    foreslope: 'talud descendente',
    backslope: 'talud ascendente',
    'the first printing of the 2011 edition has wider backslope values at 40 mi/h and below; its errata correct them':
      'la primera impresión de la edición de 2011 tiene valores más anchos de talud ascendente a 40 mi/h o menos; su fe de erratas los corrige',
    'flatter is always allowed, steeper only where crash tested: 31 in W-beam to 5:1; 27 3/4 in W-beam is doubtful steeper than 15:1 at test level 3 (public answer 321)':
      'más tendido se permite siempre, más brusco solo donde se ensayó a choque: la doble onda de 31 in hasta 5:1; la de 27 3/4 in es dudosa a más de 15:1 en el nivel de ensayo 3 (respuesta pública 321)',
    'the 65 mi/h column is least certain; that no factor is needed above a radius of 2950 ft is printed in a public guide for military roads':
      'la columna de 65 mi/h es la menos segura; que no hace falta factor por encima de un radio de 2950 ft lo imprime una guía pública para caminos militares',
  },
  patterns: [
    ['Approach: $', 'Entrada: $'],
    ['Departure: $', 'Salida: $'],
    [
      'Runout length interpolated between # and #, as the site asks.',
      'Longitud de salida de la vía interpolada entre # y #, como pide el sitio.',
    ],
    [
      'Runout length of #, the next higher speed of $; set interpolateSpeeds to interpolate.',
      'Longitud de salida de la vía de #, la velocidad siguiente mayor de $; marque interpolar (interpolateSpeeds) para interpolar.',
    ],
    [
      'Runout length # as given in the site, not from a table.',
      'Longitud de salida de la vía #, dada en el sitio, no de una tabla.',
    ],
    ['The table gives a clear zone of # to #; # is used.', 'La tabla da una zona despejada de # a #; se usa #.'],
    [
      'Where similar designs have a satisfactory history the clear zone may be limited to #.',
      'Donde diseños parecidos han dado buen resultado, la zona despejada puede limitarse a #.',
    ],
    [
      'Outside of a curve of # radius: the clear zone is multiplied by #, to #.',
      'Exterior de una curva de # de radio: la zona despejada se multiplica por #, y resulta #.',
    ],
    [
      'Outside of a curve of # radius: the clear zone is taken as given, without a curve factor.',
      'Exterior de una curva de # de radio: la zona despejada se toma como está dada, sin factor de curva.',
    ],
    [
      '$ begins # from the edge of this traffic, beyond its clear zone of #: not shielded.',
      '$ empieza a # del borde de este tránsito, más allá de su zona despejada de #: no se protege.',
    ],
    [
      '$ goes on beyond the clear zone: shielded to its limit, #.',
      '$ sigue más allá de la zona despejada: se protege hasta su límite, #.',
    ],
    [
      '$ reaches to #: shielded to the limit of the clear zone, #.',
      '$ llega hasta #: se protege hasta el límite de la zona despejada, #.',
    ],
    [
      'The hazard lies exactly at the limit of the clear zone, #; it is counted as inside.',
      'El peligro está justo en el límite de la zona despejada, #; se cuenta como dentro.',
    ],
    [
      'The barrier lies exactly at the limit of the clear zone, #; it is counted as inside.',
      'La barrera está justo en el límite de la zona despejada, #; se cuenta como dentro.',
    ],
    [
      '$ begins at the face of the barrier: there is no room for its working width.',
      '$ empieza en la cara de la barrera: no hay espacio para su ancho de trabajo.',
    ],
    [
      'The barrier stands # from the edge, inside the shy line at #.',
      'La barrera está a # del borde, dentro de la línea de recelo, que está a #.',
    ],
    [
      'No shy-line offset is tabulated above #: not judged.',
      'No hay distancia de la línea de recelo en la tabla por encima de #: no se juzga.',
    ],
    [
      'No flare limit is tabulated above #: not judged.',
      'No hay límite de abocinado en la tabla por encima de #: no se juzga.',
    ],
    [
      'The flare of #:1 is steeper than #:1, suggested $: only where crash tested.',
      'El abocinado de #:1 es más brusco que #:1, lo sugerido $: solo donde se ensayó a choque.',
    ],
    [
      'The flare crosses the shy line # from the hazard: #:1 holds up to there, #:1 beyond.',
      'El abocinado cruza la línea de recelo a # del peligro: hasta ahí vale #:1, más allá #:1.',
    ],
    [
      'With #:1 beyond it the need would be #, ending # out.',
      'Con #:1 más allá, la necesidad sería #, y acabaría a # del borde.',
    ],
    [
      'The need of # ends on the parallel part of #: the parallel formula governs.',
      'La necesidad de # acaba en la parte paralela de #: rige la fórmula de la paralela.',
    ],
    [
      'The barrier stands # out, at or beyond the lateral extent of #: no length is needed.',
      'La barrera está a # del borde, en la extensión lateral de # o más allá: no hace falta longitud.',
    ],
    [
      'Solved on the curve (hazard on the $), runout length measured along the $; the straight formula would give #.',
      'Resuelto en la curva (peligro en el lado $), con la longitud de salida medida por: $; la fórmula de la recta daría #.',
    ],
    ['$ governs; it begins # behind the first hazard.', 'Rige $; empieza # detrás del primer peligro.'],
    [
      'With # lanes the edge of opposing traffic is taken in the middle of the road.',
      'Con # carriles, el borde del tránsito contrario se toma en el centro de la vía.',
    ],
    ['$ cuts the run: # can stand, # are missing.', '$ corta el tramo: caben #, faltan #.'],
    ['Enough would be: $.', 'Bastaría: $.'],
    ['a flare of #:1 (steeper than the suggested #:1)', 'un abocinado de #:1 (más brusco que el sugerido de #:1)'],
    ['a flare of #:1', 'un abocinado de #:1'],
    ['the barrier at #', 'la barrera a #'],
    ['a hazard that reaches no further than #', 'un peligro que no llegue más allá de #'],
    ['to accept a runout length of #', 'aceptar una longitud de salida de la vía de #'],
    // Why a need cannot be computed.
    ['at most #, where $ ends, or $ given as a length', 'a lo más #, donde acaba $, o dar como longitud $'],
    ['runoutLength', 'la longitud de salida (runoutLength)'],
    ['clearZone', 'la zona despejada (clearZone)'],
    [
      "a slope no steeper than #, to which the table's distances apply directly, or clearZone given as a width",
      'un talud no más brusco que #, al que se aplican directamente las distancias de la tabla, o dar la zona despejada (clearZone) como ancho',
    ],
    ['a radius of at least #', 'un radio de al menos #'],
    [
      '$ for the curve factor of $ at # (it is not extrapolated), or clearZone given as a width',
      '$ para el factor de curva de $ a # (no se extrapola), o dar la zona despejada (clearZone) como ancho',
    ],
    ['a radius of #', 'un radio de #'],
    [
      'a curve with a radius of more than #, the lateral distance to be reached on its inside',
      'una curva de más de # de radio, la distancia lateral que hay que alcanzar en su interior',
    ],
    [
      'hazards and need of at most # (10 miles) together: split the site where a run may end',
      'peligros y necesidad de a lo más # (10 millas) juntos: divida el sitio donde pueda acabar un tramo',
    ],
    ['numbers from which _ of the need can be computed', 'números de los que se pueda calcular _ de la necesidad'],
    ['numbers too large or too small for it', 'números demasiado grandes o pequeños para ello'],
    [
      'an alignment that reaches station #, where the runout length begins',
      'un alineamiento que llegue a la estación #, donde empieza la longitud de salida de la vía',
    ],
    ['one that ends at #', 'uno que acaba en #'],
    ['hazards between stations # and # of the alignment', 'peligros entre las estaciones # y # del alineamiento'],
    ['$ beyond them', '$ más allá de ellas'],
    [
      'a runout length of more than the lateral extent, #',
      'una longitud de salida de la vía de más que la extensión lateral, #',
    ],
    [
      'a curve around which a runout length of # turns by less than half a circle',
      'una curva en la que una longitud de salida de # gire menos de media vuelta',
    ],
    // Where a number of a table comes from.
    ['ADT # to #', 'TPDA # a #'],
    ['ADT above #', 'TPDA de más de #'],
    ['up to #', 'hasta #'],
    ['inside the $', 'dentro de la $'],
    ['beyond the $', 'más allá de la $'],
    ['foreslope # or flatter', 'talud descendente # o más tendido'],
    ['backslope # or flatter', 'talud ascendente # o más tendido'],
  ],
}
