import type { record as english } from '../en/record.ts'

const some = (number: number): string => `${number} requisito${number === 1 ? '' : 's'}`

export const record: typeof english = {
  title: 'Acta de inspección',
  means: (kind, counts) => [rulesMean(kind, counts), ...seenMean(counts)].join(' '),
  notAllRead: 'sin lectura, y sin todas aquellas de las que se podría calcular',
  signatures: ['Contratista', 'Inspector', 'Ingeniero'],
  hashOf:
    'SHA-256, por la regla 2, del tramo, la disposición, las fichas en uso, las lecturas, las fotos y la regla de decisión como JSON canónico',
  setAside: 'Dejado de lado: no lo juzga el programa por decisión de una persona nombrada, con un motivo',
  place: 'Lugar',
  requirement: 'Requisito',
  because: 'Porque',
  setAsideBy: 'Lo dejó de lado',
  requirements: '{count} requisitos',
  atNumbers: 'requisito n.º {numbers}',
  sheets: 'Fichas de herrajes por las que se juzga',
  part: 'Parte del tramo',
  sheet: 'Ficha',
  criteria: 'Criterios de ensayo',
  notice: 'Aviso',
  version: '{id}, versión {version}',
  decisionRule: 'Regla de decisión.',
  findings: 'Hallazgos',
  none: 'Ninguno.',
  number: 'N.º',
  found: 'Qué se encontró',
  remedy: 'Qué hacer',
  foundIs: 'Hallado:',
  mustBe: 'Debe ser:',
  fromPostOne: '{along} desde el poste 1',
  freeFindings: 'Visto además: hallazgos libres, que ningún requisito pide',
  seen: 'Qué se vio',
  howBad: 'Cuán grave',
  seenBy: 'Por, cuándo; cerrado',
  placeGone: 'en un lugar que esta versión del tramo no tiene',
  closedAs: { 'put right': 'corregido por', 'not so': 'no es así, por' },
  assigned: (owner, due) =>
    [...(owner === null ? [] : [`se encarga ${owner}`]), ...(due === null ? [] : [`para el ${due}`])].join(', '),
  rechecks: 'Revisiones',
  finding: 'Hallazgo',
  reading: 'Lectura',
  byAt: 'Quién, cuándo',
  now: 'Ahora',
  readingOf: '{id}, de {of}',
  unproven: 'Lo que está sin probar',
  allProven: 'Nada: cada requisito está leído y decidido.',
  onMemory: (count) =>
    `${count === 1 ? 'Un veredicto se apoya en un límite' : `${count} veredictos se apoyan en límites`} de memoria, que nadie ha confirmado: vea «Límites que nadie ha confirmado».`,
  why: 'Por qué está sin probar',
  strip: 'El tramo como franja',
  nextPage:
    'La página siguiente muestra el tramo a escala; la escala y una barra para comprobar la impresión están en cada una. Imprima al 100 %, sin ajustar a la página.',
  nextPages:
    'Las {count} páginas siguientes muestran el tramo a escala; la escala y una barra para comprobar la impresión están en cada una. Imprima al 100 %, sin ajustar a la página.',
  photo: 'Foto {number}',
  photoInText: 'foto {number}',
  absent: '(no está en este paquete)',
  morePhotos: 'y fotos {numbers}',
  corrects: '; corrige {id}',
  together: 'tomada de una vez para varios lugares ({name})',
  noReading: 'sin lectura',
  by: '{id}, por {sheet}, fuente {source}, {confirmation}',
  limit: 'Límite',
  verdict: 'Veredicto',
  holdPoints: 'Puntos de espera: lo que el trabajo posterior cubre',
  inOrder: 'Requisitos en el orden del recorrido',
  of: 'De',
  value: 'Valor',
  instrument: 'Instrumento, dónde',
  measured: 'Lecturas de las que se calculan valores',
  photos: 'Fotos',
  photoUnknown: 'SHA-256 no conocido: no estaba a mano',
  photosHashOf: 'SHA-256 de la lista de fotos con el SHA-256 de cada una, que el manifiesto repite como photosHash',
  photoAbsent: 'Esta foto no está en este paquete.',
  named: (at, by) => `nombrada en una lectura de ${at} por ${by}`,
  theRun: 'el tramo',
  shows: (number, place, must) => `N.º ${number}, ${place}: ${must}`,
  timeUnknown: 'hora desconocida',
  drawnOn: (photo) => `dibujada sobre ${photo}`,
  strokesBy: (by, at) => `marcada por ${by}, ${at}`,
  replaced: 'Lecturas que ya no cuentan',
  noneReplaced: 'Ninguna: no se corrigió ni se repitió ninguna lectura.',
  replacedBy: 'Reemplazada por',
  withoutEffect: 'Dicho sin efecto',
  withoutEffectHow:
    'Lo que está en la última columna no cuenta para nada; todo lo demás que dicen estas lecturas cuenta.',
  versionReasons: 'Por qué se cambió el tramo',
  versionReason: (number, because, by) => `Versión ${number}: ${because}${by === null ? '' : ` (${by})`}`,
  askedEarlier: 'Pedido por una versión anterior',
  askedEarlierHow:
    'Lo que una versión anterior del tramo pedía y esta no. Queda como se registró, y nada se juzga por ello.',
  askedWhy: '{why} (versión {version})',
  whyNot: 'Por qué',
  photoHead: 'Foto',
  unconfirmed: 'Límites que nadie ha confirmado',
  unconfirmedHow:
    'Estos límites son de memoria. Cotéjelos con el documento vigente antes de fiarse de un veredicto que se apoya en ellos.',
  sheetSource: 'Ficha, fuente',
  sourceNumber: '{sheet}, fuente {source}',
  sources: 'Fuentes de los límites',
  document: 'Documento',
  edition: 'Edición',
  unusual: 'Valores no habituales',
  unusualHow: 'Se leyeron como están y rara vez son correctos. Mire cada uno otra vez.',
  cautions: 'Advertencias',
  signed: 'Firmado en un dispositivo',
  signedVersion: '(versión {version})',
  typed: 'Firmado escribiendo el nombre.',
  drawn: 'Dibujado a mano.',
  signedAs: 'Firmado como {state}, con {count} sin probar.',
  standing: {
    same: 'El acta que se firmó es esta.',
    unknown: 'El acta que se firmó es OTRA: no se sabe si todo lo que abarcaba está en esta.',
    other:
      'El acta que se firmó es OTRA: el tramo, la disposición, las fichas, las lecturas, las fotos o la regla de decisión eran otros.',
    earlier: (count) =>
      count === 1
        ? 'El acta que se firmó es ANTERIOR: desde entonces se añadió 1 lectura.'
        : `El acta que se firmó es ANTERIOR: desde entonces se añadieron ${count} lecturas.`,
  },
  signedHash: 'SHA-256 del acta que se firmó:',
  signatureOf: (name) => `Firma de ${name}`,
  signatureTyped: (role) => `El nombre escrito, como ${role}.`,
  signatureDrawn: (role) => `Dibujada a mano, como ${role}.`,
  byHand: 'Firmas a mano',
  byHandHow: 'Quien firma declara que el acta es aquella cuya huella está abajo, y responde por la aceptación.',
  role: 'Papel',
  name: 'Nombre, licencia donde la ley la pide',
  signature: 'Firma',
  date: 'Fecha',
}

function rulesMean(
  kind: Parameters<typeof english.means>[0],
  { fails, unrechecked, open, doesNotApply }: Counts,
): string {
  switch (kind) {
    case 'acceptable':
      return `Cada requisito cumple su límite${doesNotApply > 0 ? ', o no aplica según el archivo del tramo' : ''}.`
    case 'acceptable except':
      return 'Todos los demás requisitos cumplen su límite. Lo que se dejó de lado está abajo, con la razón y el nombre de quien responde por ello.'
    case 'not acceptable':
      return [
        ...(fails > 0 ? [`${some(fails)} sin cumplir: vea los hallazgos.`] : []),
        ...(unrechecked > 0 ? [`${some(unrechecked)} sin cumplir antes, leídos de nuevo pero no como revisión.`] : []),
        ...(open > 0 ? [`${some(open)} sin probar en ningún sentido.`] : []),
      ].join(' ')
    case 'not yet known':
      return open === 0
        ? 'Nada deja de cumplir, pero ninguna lectura prueba nada.'
        : `Nada deja de cumplir, pero ${some(open)} sin probar.`
    default:
      return kind satisfies never
  }
}

type Counts = Parameters<typeof english.means>[1]

const free = (number: number): string => (number === 1 ? '1 hallazgo libre' : `${number} hallazgos libres`)

const seenMean = ({ seen, grave }: Counts): readonly string[] => [
  ...(grave > 0
    ? [`${free(grave)} que pueden hacer fallar el herraje: el tramo no es aceptable antes de que se cierren.`]
    : []),
  ...(seen > grave ? [`${free(seen - grave)} de menos peso siguen en pie junto a los requisitos.`] : []),
]
