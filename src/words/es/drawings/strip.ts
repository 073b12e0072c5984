import type { strip as english } from '../../en/drawings/strip.ts'

export const strip: typeof english = {
  title: (run) => `Franja de ${run}`,
  description: (units, pieces, verdicts) =>
    `Planta del tramo desde su extremo de aguas arriba, a la izquierda, hasta el de aguas abajo, a la derecha: ${units.join('; después ')}; ${pieces}. ${verdicts}`,
  notJudged: 'Aún no se ha juzgado nada.',
  noneFails: 'Ningún lugar deja de cumplir.',
  measure: (offsetTimes, runFlare) =>
    [
      'Las distancias a lo largo de la baranda están a escala;',
      ...(offsetTimes === null
        ? []
        : offsetTimes === 1
          ? ['el abocinado está a la misma escala;']
          : [`EL ABOCINADO ESTÁ DIBUJADO ${offsetTimes} VECES MÁS GRANDE;`]),
      ...(runFlare === null ? [] : [`el abocinado del tramo, ${runFlare}:1, se dibuja recto;`]),
      'baranda, bloques, postes y extremos son signos, no a escala. Lado del tránsito arriba.',
    ].join(' '),
  posts: { standard: 'poste', breakaway: 'poste rompible', moved: 'poste movido', special: 'poste especial' },
  standingPost: 'poste que ya está',
  noPost: 'sin poste',
  block: 'bloque separador',
  numbered: (number, own) => `poste ${number}, poste ${own} de su unidad de extremo`,
  splice: 'empalme: la línea de arriba queda del lado del tránsito',
  ends: {
    terminal: 'cabeza de impacto',
    'trailing anchor': 'anclaje',
    'buried end': 'extremo enterrado en el talud',
    'bridge end': 'puente',
    'standing splice': 'tramo existente',
    'unknown end': 'extremo del que no se conoce ficha',
  },
  noPostHere: 'aquí no puede ir poste',
  countOfWorst: '2/7: 2 de los 7 veredictos de este lugar son tan malos como el signo',
  rows: {
    need: 'necesidad',
    counts: 'baranda que cuenta',
    wholes: 'extremos, tramo',
    post: 'postes',
    space: 'espacios',
    splice: 'empalmes',
    panel: 'paneles',
  },
  toBeShielded: (length) => `por proteger, ${length}`,
  counts: (length) => `cuenta para la necesidad, ${length}`,
  countsOn: 'cuenta para la necesidad; sigue en el tramo existente',
  countsUnknown: 'contaría para la necesidad; no se sabe, porque no se conoce un extremo',
  adjacent: {
    'one-way': 'tránsito contiguo, un sentido',
    'two-way': 'tránsito contiguo',
    divided: 'tránsito contiguo, vía dividida',
  },
  opposing: 'tránsito contrario',
  trafficNotStated: 'lado del tránsito; no se dice el sentido',
  directionNotStated: 'lado del tránsito, no se dice el sentido',
  leftToRight: (traffic) => `${traffic}, de izquierda a derecha`,
}
