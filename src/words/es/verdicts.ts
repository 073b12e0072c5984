import { endExposure, testAnswerSaying } from '../../core/hardware/hardware-saying.ts'
import type { SeenKind, Severity, Stated } from '../../core/hardware/hardware-sheet.ts'
import type { Rated } from '../../core/hardware/severity.ts'
import type { RemedyStep } from '../../core/verdicts/remedy.ts'
import { type MeasuredValue, measuredValue, type VerdictSaying } from '../../core/verdicts/saying.ts'
import type { Acceptance, FoundPart, Measured, MissingReading, VerdictWord } from '../../core/verdicts/verdict.ts'
import { lowerFirst } from '../lower-first.ts'
import type { Print, Printers } from '../print.ts'

type Sayings = Exclude<VerdictSaying, RemedyStep | { readonly kind: 'remedy' } | Acceptance>

/** Why verdicts are what they are, and what is found. */
export const verdicts: Printers<Sayings> = {
  measured: measuredReason,
  'measured value': valueText,
  side: ({ side }) => (side === 'away' ? 'del lado opuesto al tránsito' : 'hacia el tránsito'),
  'verdicts at place': ({ place, worst, count, applying }, print) =>
    `${print.say(place)}: ${verdictNames[worst]}${worst === 'does not apply' ? '' : `, ${count} de ${applying}`}`,
  verdict: ({ word }) => verdictNames[word],
  'fails at': ({ places }, print) => `No cumple en: ${places.map(print.say).join('; ')}.`,
  chosen: ({ label }, print) => print.say(label),
  confirmed: ({ yes }) => (yes ? 'confirmado' : 'no confirmado'),
  'nobody looked': () => 'sin lectura',
  'could not be seen': () => 'no se pudo ver',
  'set aside': ({ by, because }, print) => `apartado por ${print.theirs(by)}: ${print.theirs(because)}`,
  'may not be set aside': ({ by, because }, print) =>
    `apartado por ${print.theirs(by)}, lo que la ficha no permite: ${print.theirs(because)}`,
  'readings missing': ({ missing }) =>
    `no hay lectura directa, y para calcularla faltan: ${missing.map(missingText).join(', ')}`,
  'answer of another kind': ({ expected }) => `la lectura no da ${expectedNames[expected]}`,
  'no limit stated': () => 'la ficha no da ningún límite',
  'side not stated': () => 'lado sin indicar: si está del lado opuesto al tránsito o hacia él',
  criteria: ({ hardware, at, answer }, print) => print.say(testAnswerSaying(hardware, at, answer)),
  crashworthy: ({ sheet, exposure }, print) => print.say(endExposure(sheet, exposure)),
  seen: ({ what }) => seenWords[what],
  'how bad': ({ severity }) => severityWords[severity],
  severity: ({ rated }) =>
    rated === 'notStated' ? severityWords.notStated : `${severityWords[rated.severity]}${onWord[rated.by]}`,
  'not said': ({ what }) => notSaid[what],
  'need of run': ({ shortAtFirst, shortAtSecond }, print) => {
    const short = (
      [
        ['primer', shortAtFirst],
        ['segundo', shortAtSecond],
      ] as const
    ).flatMap(([end, inches]) =>
      inches === null || inches === 0 ? [] : [`faltan ${print.feetInches(inches)} en el ${end} extremo`],
    )
    if (short.length > 0) return print.list(short, 'and')
    return shortAtFirst === null || shortAtSecond === null
      ? 'no se sabe desde dónde cuenta la baranda'
      : 'cubierto en ambos extremos'
  },
  'unit joins another system': ({ unit, system }, print) =>
    `${lowerFirst(print.say(unit))} en ${lowerFirst(print.say(system))}`,
  'too few pieces': ({ of, counted, wanted }) =>
    of === 'posts' ? `${counted} postes contados, ${wanted} pedidos` : `${counted} paneles contados, ${wanted} pedidos`,
  'site check': ({ check }, print) => `${print.say(check.value)}, como lo tenía el sitio cuando se hizo el tramo`,
  counted: ({ label }, print) => `contado: ${lowerFirst(print.say(label))}`,
  'measured at the count': ({ value, unit }, print) => `${print.measured(value, unit)}, medido al contar`,
  'not rechecked': () => 'falló, y se leyó otra vez, pero no como revisión del hallazgo que pruebe que está corregido',

  correction: ({ names }) => `corrige ${names}, sin efecto: no es una lectura anterior de lo mismo`,
  'setting aside': ({ names }) => `aparta ${names}, sin efecto: eso no se puede apartar`,
  recheck: ({ names }) => `revisa ${names}, sin efecto: esta lectura no puede probar que ese hallazgo esté corregido`,

  found: ({ parts }, print) =>
    `Hallado: ${print.say({ kind: 'what was found', parts })} Debe ser: ${print.say({ kind: 'what must be', parts })}`,
  'what was found': ({ parts }, print) => parts.map((part) => `${foundText(part, print)}.`).join(' '),
  'what must be': ({ parts }, print) => parts.map((part) => mustText(part, print)).join(' '),
}

const verdictNames: Readonly<Record<VerdictWord, string>> = {
  meets: 'cumple',
  fails: 'no cumple',
  'too close': 'demasiado justo',
  unread: 'sin leer',
  'does not apply': 'no aplica',
}

const notSaid = {
  need: 'no se dijo qué hay que proteger, o no se miró todo el tramo: nada aquí prueba que proteja',
  'rest of run': 'nadie miró el resto del tramo, ni su longitud',
  location: 'no se dijo ni la estación ni la posición del tramo',
  'end hardware': 'no se sabe qué herraje termina el tramo: nada de él se revisó',
} as const

const expectedNames = {
  length: 'una longitud',
  slope: 'una pendiente',
  angle: 'un ángulo',
  torque: 'un par de apriete',
  force: 'una fuerza',
  count: 'una cuenta',
  choice: 'una opción',
  confirmation: 'una confirmación',
} as const

const seenWords: Readonly<Record<SeenKind, string>> = {
  hit: 'golpe de un vehículo',
  'missing part': 'falta una pieza',
  erosion: 'terreno erosionado',
  debris: 'escombros',
  growth: 'maleza',
  'missing delineator': 'falta un delineador',
  other: 'otra cosa',
}

const severityWords: Readonly<Record<Stated<Severity>, string>> = {
  'lets it fail': 'puede hacer que falle al ser golpeado',
  'weakens it': 'lo debilita',
  upkeep: 'conservación',
  notStated: 'la ficha no dice cuán grave es; se toma como lo más grave',
}

const onWord: Readonly<Record<Rated['by'], string>> = {
  published: '',
  'common practice': '',
  'from memory': ' (de memoria, sin confirmar)',
  'its finder': ' (según quien lo halló)',
}

/** What it is, as it was read. */
function foundText(part: FoundPart, print: Print): string {
  switch (part.kind) {
    case 'against a rule':
      return print.say(part.because)
    case 'posts out of place': {
      const { from, to, by, unit, because } = part
      const posts = from === to ? `el poste ${from} está` : `los postes ${from} a ${to} están`
      return `${posts} ${print.measured(by, unit)} fuera de su sitio: ${because.map(print.say).join('; después ')}`
    }
    case 'panels and splices': {
      const { panels, splices } = part
      const said = panels.map(({ place, because }) => `${print.say(place)}: ${print.say(because)}`)
      if (splices.length > 0)
        said.push(`${splices.length > 1 ? 'empalmes' : 'empalme'} ${splices.join(', ')} fuera de sitio`)
      return said.join('; ')
    }
  }
}

/** What it has to be instead. */
function mustText(part: FoundPart, print: Print): string {
  switch (part.kind) {
    case 'against a rule':
      return print.say(part.must)
    case 'posts out of place':
      return 'Cada poste está donde la disposición lo pone.'
    case 'panels and splices':
      return 'Cada panel tiene la longitud que da la disposición, y cada empalme está en su sitio.'
  }
}

function measuredReason(because: Measured, print: Print): string {
  const { unit, margin, uncertainty, guard, probability, computed } = because
  const far = print.measured(Math.abs(margin), unit)
  const side = margin < 0 ? `${far} fuera del límite` : margin === 0 ? 'en el límite' : `${far} dentro del límite`
  const rule = guard > 0 && Math.abs(margin) < guard ? ', dentro de la banda de guarda' : ''
  const percent =
    probability > 0.999 ? 'más del 99.9' : probability < 0.001 ? 'menos del 0.1' : (probability * 100).toFixed(1)
  const how = computed ? 'calculado ' : ''
  const either = because.side === 'not stated' ? ' a cualquiera de los dos lados' : ''
  const doubt = `± ${print.decimal(2 * uncertainty, unit)} (k = 2)`
  return `${how}${print.say(measuredValue(because))}, ${side}${rule}${either}; ${doubt}; probabilidad de conformidad ${percent} %`
}

function valueText({ value, unit, side }: MeasuredValue, print: Print): string {
  if (side === undefined || value === 0) return print.measured(value, unit)
  const size = print.measured(Math.abs(value), unit)
  if (side === 'not stated') return `${size}, lado sin indicar`
  return `${size} ${print.say({ kind: 'side', side: value < 0 ? 'toward' : 'away' })}`
}

function missingText({ of, post, what }: MissingReading): string {
  if (post === null) return of
  return what === 'along' ? `la posición del poste ${post}` : `la distancia lateral del poste ${post}`
}
