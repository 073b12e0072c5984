import type { SpanishWords } from './spanish-words.ts'

/** Checks of the chosen hardware against the site, and the least change that mends what fails. */
export const fitCheckWords: SpanishWords = {
  sentences: {
    'no system chosen': 'sin sistema elegido',
    'rail height and splices against the adjoining run': 'altura de la baranda y empalmes frente al tramo contiguo',
    'barrier before the transition': 'barrera antes de la transición',
    'run not laid out': 'tramo sin disponer',
    'length of the run, anchor to anchor': 'longitud del tramo, de anclaje a anclaje',
    'not said': 'no se dice',
    'new work': 'obra nueva',
    'standing work': 'obra existente',
    'kind of work not said': 'no se dice la clase de obra',
    'letting not said': 'no se dice la adjudicación',
    'level ground behind post 1': 'terreno llano detrás del poste 1',
    'clear area behind the gating end, length': 'área despejada detrás del extremo traspasable, largo',
    'clear area behind the gating end, width': 'área despejada detrás del extremo traspasable, ancho',
    'foreslope beside the platform': 'talud descendente junto a la plataforma',
    '1V:3H or flatter; 1V:1.5H is not acceptable under any circumstance':
      '1V:3H o más tendido; 1V:1.5H no se acepta en ningún caso',
    'flatten the slope beside the platform to 1V:3H': 'tienda el talud junto a la plataforma a 1V:3H',
    'a tangent terminal, which needs less room': 'un terminal tangente, que necesita menos espacio',
    'or take a tangent terminal, which needs less room': 'o tome un terminal tangente, que necesita menos espacio',
    'ground behind the posts to the slope break, 6-ft posts':
      'terreno detrás de los postes hasta el quiebre del talud, postes de 6 ft',
    '8-ft or 9-ft posts at the break, or 7-ft posts at half spacing':
      'postes de 8 ft o 9 ft en el quiebre, o postes de 7 ft con la mitad de separación',
    'curb before the rail': 'bordillo delante de la baranda',
    'curb before the rail, by another study': 'bordillo delante de la baranda, según otro estudio',
    'slope of its face not said': 'no se dice la inclinación de su cara',
    'none, or one of the height, face and place that the speed allows':
      'ninguno, o uno con la altura, la cara y el lugar que la velocidad permite',
    "none from 50 ft before post 1 to the end of the terminal; where there must be one, at most 4 in and sloping, as far as the terminal's own manual allows it":
      'ninguno desde 50 ft antes del poste 1 hasta el final del terminal; donde tenga que haberlo, de a lo más 4 in e inclinado, si el manual propio del terminal lo permite',
    'no curb before the terminal': 'ningún bordillo delante del terminal',
    vertical: 'vertical',
    sloping: 'inclinado',
    'the rail flush with the curb': 'la baranda a ras del bordillo',
    'a sloping face': 'una cara inclinada',
    'Recalled: state manuals; a public guide for military roads asks for at most 4 in before any rail at high speed':
      'De memoria: manuales de estados; una guía pública para caminos militares pide a lo más 4 in delante de toda baranda a alta velocidad',
    'AASHTO Roadside Design Guide, 2011, 5.6.2.1.1, as quoted by the asking state in Midwest Roadside Safety Facility public answer 1074; NCHRP Report 1089, newer and on 31 in runs, was not read':
      'AASHTO Roadside Design Guide, 2011, 5.6.2.1.1, según lo cita el estado que pregunta en la respuesta pública 1074 de Midwest Roadside Safety Facility; no se leyó NCHRP Report 1089, más nuevo y sobre tramos de 31 in',
    'NCHRP Report 537, 2005, page 94, which asks this from lower speeds on than the Roadside Design Guide':
      'NCHRP Report 537, 2005, página 94, que pide esto desde velocidades más bajas que la Roadside Design Guide',
    'Recalled: state sheets on height transitions': 'De memoria: fichas de estados sobre transiciones de altura',
  },
  patterns: [
    ['$ on the chosen system', '$: con el sistema elegido'],
    ['joins _', 'se une a _'],
    ['the system _, or an end made for $', 'el sistema _, o un extremo hecho para: $'],
    [
      'change height by # over #, outside the terminal and its stopping distance',
      'cambie la altura # a lo largo de #, fuera del terminal y de su distancia de detención',
    ],
    [
      'change height by # over # to # of rail, outside the terminal and its stopping distance',
      'cambie la altura # a lo largo de # a # de baranda, fuera del terminal y de su distancia de detención',
    ],
    [
      'one odd panel (# or #) shifts the splices by half a post space',
      'un panel especial (# o #) desplaza los empalmes medio espacio entre postes',
    ],
    ['# within #, splices $', '# con # de margen, empalmes $'],
    ['#, splices $', '#, empalmes $'],
    [
      "at least #: #, the terminal with # of plain rail, and the terminal's stroke",
      'al menos #: #, el terminal con # de baranda corriente, y el recorrido del terminal',
    ],
    [
      '# more plain rail between terminal and transition',
      '# más de baranda corriente entre el terminal y la transición',
    ],
    ['of that only about # redirects', 'de eso solo unos # redirigen'],
    ['at least # is recommended', 'se recomiendan al menos #'],
    ['at least #, the shortest tested', 'al menos #, lo más corto que se ensayó'],
    ['# more rail', '# más de baranda'],
    ['room behind the rail to $, at $ spacing', 'espacio detrás de la baranda hasta $, con separación $'],
    [
      'at least # from the front face of the rail, under MASH',
      'al menos # desde la cara delantera de la baranda, según MASH',
    ],
    [
      'at least # from the front face of the rail, under NCHRP #',
      'al menos # desde la cara delantera de la baranda, según NCHRP #',
    ],
    ['move the rail # farther from $', 'aleje la baranda # más de $'],
    ['not stated for $ spacing under MASH', 'no se indica para separación $ según MASH'],
    ['not stated for $ spacing under NCHRP #', 'no se indica para separación $ según NCHRP #'],
    ['$ spacing for #: needs #', 'separación $ en #: necesita #'],
    [
      '$ spacing for #: needs #, with # of half spacing before it',
      'separación $ en #: necesita #, con # a mitad de separación antes',
    ],
    [
      '$ spacing for #: needs #, with # of half spacing before and after it',
      'separación $ en #: necesita #, con # a mitad de separación antes y después',
    ],
    ['platform before and beside the $', 'plataforma delante y al lado del $'],
    ['# or flatter', '# o más tendido'],
    ['grade the platform to #', 'nivele la plataforma a #'],
    ['grade the platform to #, $', 'nivele la plataforma a #, $'],
    ['# of platform behind post 1', '# de plataforma detrás del poste 1'],
    ['# of platform behind post 1, or $', '# de plataforma detrás del poste 1, o $'],
    [
      'clear # behind the end, or move the end upstream',
      'despeje # detrás del extremo, o mueva el extremo aguas arriba',
    ],
    [
      'clear # behind the rail, or move the end upstream',
      'despeje # detrás de la baranda, o mueva el extremo aguas arriba',
    ],
    ['at least # to a break to #', 'al menos # hasta un quiebre a #'],
    [
      'widen the ground behind the posts to #, or 8-ft or 9-ft posts 1 ft before the break',
      'ensanche el terreno detrás de los postes a #, o postes de 8 ft o 9 ft, 1 ft antes del quiebre',
    ],
    ['rail $; curb of at most # with $', 'baranda $; bordillo de a lo más # con $'],
    [
      'flush (to # behind, as the # run was tested), or # or more behind',
      'a ras (hasta # detrás, como se ensayó el tramo de #), o # o más detrás',
    ],
    ['flush (to # behind, as the # run was tested)', 'a ras (hasta # detrás, como se ensayó el tramo de #)'],
    ['a sloping face of # or flatter', 'una cara inclinada de # o más tendida'],
    [
      'the # run passed NCHRP # test level # with its rail # behind a # curb: text and test differ',
      'el tramo de # pasó el nivel de ensayo $3 de NCHRP $2 con su baranda $4 detrás de un bordillo de $5: el texto y el ensayo difieren',
    ],
    [
      'NCHRP Report #, page #, finds a risk that a vehicle goes over a rail less than # behind a curb: the texts differ',
      'NCHRP Report #, página #, halla riesgo de que un vehículo pase sobre una baranda a menos de # detrás de un bordillo: los textos difieren',
    ],
    ['rail # behind a $ curb of #', 'baranda # detrás de un bordillo $ de #'],
    ['face #', 'cara #'],
    ['curb before the $', 'bordillo delante de: $'],
    ['a curb of #', 'un bordillo de #'],
    [
      '$; no height change inside a terminal or its stopping distance (public research answer #)',
      '$; ningún cambio de altura dentro de un terminal ni de su distancia de detención (respuesta pública de investigación #)',
    ],
  ],
}
