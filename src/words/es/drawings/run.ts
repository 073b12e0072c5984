import type { run as english } from '../../en/drawings/run.ts'

export const run: typeof english = {
  /** Of documents too. */
  titleBlock: {
    cells: {
      agency: 'Organismo',
      contract: 'Contrato',
      project: 'Proyecto',
      drawn: 'Dibujó',
      checked: 'Revisó',
      approved: 'Aprobó',
    },
    seal: 'Sello',
    revision: (number, date, what) => `Revisión ${number}, ${date}: ${what}`,
    replaces: (issue) => `reemplaza ${issue}`,
  },
  standingRun: 'tramo existente',
  unknownEnd: 'extremo del que no se conoce ficha',
  datumAt: (station) => `origen en ${station}`,
  screenScale: (ratio) => `Escala 1:${ratio} antes de ampliarla`,
  paperScale: (scale, paper) => `Escala ${scale} impresa al 100 % en papel ${papers[paper]}`,
  barCheck: (length) => `esta barra mide ${length} si se imprime al 100 %`,
  page: (number, of) => `página ${number} de ${of}`,
  onPage: (title, page) => `${title}, ${page}`,
  pieces: (posts, panels, splices) =>
    `${count(posts, 'poste', 'postes')}, ${count(panels, 'panel', 'paneles')}, ${count(splices, 'empalme', 'empalmes')}`,
  post: (number) => `poste ${number}`,
  ownPost: (number, own) => `poste ${number} (${own})`,
  postOf: (number, own, end) => `poste ${number} (poste ${own} de: ${end})`,
  postFacts: (post, kind, state, hasBlock, along) =>
    `${post}, ${kind}${states[state]}, ${hasBlock ? 'con bloque' : 'sin bloque'}, a ${along}`,
  omitted: (along, obstruction, rule) => `sin poste a ${along}: ${obstruction}, hueco ${gaps[rule]}`,
  panel: (number) => `panel ${number}`,
  panelOf: (number, own, end) => `panel ${number} (panel ${own} de: ${end})`,
  panelFacts: (panel, length, note) => `${panel}, ${length}${note === null ? '' : `, ${note}`}`,
  panelLength: (number, length) => `panel ${number}: ${length}`,
  roles: { adapter: 'adaptador', converting: 'longitud especial', 'end only': 'de extremo', hung: 'ya colgado' },
  nested: 'doble',
  splice: (number, position) =>
    `empalme ${number}, ${position === 'post' ? 'en un poste' : 'a media distancia entre postes'}`,
  spliceWithLap: (splice, inFront) =>
    `${splice}, panel de aguas ${inFront === 'upstream' ? 'arriba' : 'abajo'} del lado del tránsito`,
  rows: { obstructions: 'aquí sin poste', parts: 'partes' },
  parts: {
    run: 'tramo',
    terminal: 'terminal',
    'trailing anchor': 'anclaje',
    'buried end': 'enterrado',
    'bridge end': 'puente',
    'standing splice': 'existente',
    'unknown end': 'no se sabe',
  },
  fromPostOne: (unit) => `${unit} desde poste 1`,
  matchLine: (number) => `línea de corte ${number}`,
}

const papers = { letter: 'carta', tabloid: 'tabloide', A4: 'A4', A3: 'A3' } as const

const gaps = {
  single: 'de un poste',
  'long span': 'de vano largo',
  'nested span': 'de vano con baranda doble',
} as const

const states = { regular: '', moved: ', movido', special: ', especial', standing: ', existente' } as const

const count = (number: number, one: string, more: string): string => `${number} ${number === 1 ? one : more}`
