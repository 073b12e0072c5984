import { useMemo, useState } from 'preact/hooks'
import { measuredAt, readValue, trueAnswer } from '../../core/drill/read-as-built.ts'
import { readingError } from '../../core/drill/reading-error.ts'
import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import type { Instrument } from '../../core/measurement/instruments.ts'
import type { MeasuredAnswer } from '../../core/measurement/reading.ts'
import type { Requirement } from '../../core/requirements/requirement.ts'
import { valueIn } from '../../core/units/quantity-kinds.ts'
import { choicesDrawn } from '../../drawing/views/figures/choices-drawn.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import type { DrillRow } from '../data/drill-row.ts'
import type { RunSource } from '../data/run-source.ts'
import { useLoaded } from '../data/use-loaded.ts'
import { halvesOf } from '../entry/figure-of.ts'
import { m, printIn, say } from '../messages.ts'
import { Picture } from '../parts/picture.tsx'
import { drillOf } from './drill-of.ts'
import { Tape } from './tape.tsx'
import { words } from './words.ts'

interface Props {
  readonly source: RunSource
  readonly run: string
  readonly judged: JudgedRun
  readonly requirement: Requirement
  /** What is read: the requirement itself, or a value it is computed from. */
  readonly of: string
  readonly sheet: HardwareSheet | null
  readonly instrument: Instrument
}

/** What somebody at this place of a practice run sees, or what the instrument in hand shows. */
export function Sight(props: Props) {
  const { source, run, requirement, of } = props
  const [drills] = useLoaded(run, () => source.drills())
  const row = drills.state === 'loaded' ? drills.value.find((one) => one.run === run) : undefined
  if (row === undefined || requirement.look.kind === 'record') return null
  const isMeasured = requirement.look.kind === 'measure' || of !== requirement.id
  return (
    <section class="sight" aria-label={words().sight.title}>
      {isMeasured ? <Measuring key={of} {...props} row={row} /> : <Looking {...props} row={row} />}
    </section>
  )
}

function Looking({ judged, requirement, sheet, row }: Props & { readonly row: DrillRow }) {
  const w = words().sight
  const { units } = judged.run
  const truth = useMemo(() => trueAnswer(drillOf(row, judged).site, requirement), [row, judged, requirement])
  const { figure, look } = requirement
  const picture = useMemo(() => {
    if (truth?.kind !== 'choice' || figure === null || sheet === null) return null
    const halves = halvesOf(figure, requirement, sheet, printIn(units))
    const { right, wrong } = choicesDrawn(look)
    return truth.choice === right?.id ? halves?.right : truth.choice === wrong?.id ? halves?.wrong : null
  }, [truth, figure, sheet, requirement, look, units, m])
  if (truth === null || truth.kind === 'measured') return null
  if (picture) return <Picture class="half" drawing={picture} />
  const choice =
    look.kind === 'choose' && truth.kind === 'choice' ? look.choices.find(({ id }) => id === truth.choice) : undefined
  const said =
    truth.kind === 'confirmed' ? (truth.yes ? w.yes : w.no) : choice === undefined ? '' : say(choice.label, units)
  return (
    <p>
      {w.look} <b>{said}</b>
    </p>
  )
}

function Measuring({ judged, requirement, of, instrument, row }: Props & { readonly row: DrillRow }) {
  const w = words().sight
  const [times, setTimes] = useState(0)
  const { site } = drillOf(row, judged)
  const reading = (): MeasuredAnswer | null => {
    const truth = of === requirement.id ? trueAnswer(site, requirement) : lengthAt(site, of)
    if (truth?.kind !== 'measured') return null
    const error = readingError(row.wish.seed, of, instrument.id, times - 1)
    const unit = truth.unit === 'in' && judged.run.units === 'metric' ? 'mm' : truth.unit
    return readValue(of, truth.value, unit, instrument, error)
  }
  const read = times === 0 ? null : reading()
  return (
    <>
      {read !== null && <Shown read={read} />}
      <button type="button" class="button" onClick={() => setTimes(times + 1)}>
        {times === 0 ? w.measure(say(instrument.name)) : w.again}
      </button>
    </>
  )
}

/** A length that another is computed from. */
function lengthAt(site: Parameters<typeof measuredAt>[0], of: string) {
  const [place = '', topic = ''] = of.split('/')
  const value = measuredAt(site, place, topic)
  return value === null ? null : ({ kind: 'measured', value, unit: 'in' } as const)
}

function Shown({ read }: { readonly read: MeasuredAnswer }) {
  const w = words().sight
  const value = printIn(null).measured(valueIn(read.value, read.unit), read.unit)
  const side = read.side !== undefined && read.value !== 0 ? w.side[read.side] : ''
  const said = `${w.shows(value)} ${side}`.trim()
  return (
    <div class="sight-shown" role="status">
      {read.unit === 'in' || read.unit === 'mm' ? (
        <>
          <Tape value={valueIn(read.value, read.unit)} unit={read.unit} said={said} />
          {side !== '' && <span>{side}</span>}
        </>
      ) : (
        <b>{said}</b>
      )}
    </div>
  )
}
