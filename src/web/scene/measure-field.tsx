import {
  type MeasuringTool,
  measureScene,
  measuringTools,
  type TouchedPoint,
  tapeStep,
} from '../../core/scene/measure.ts'
import { exactLength } from '../../core/units/exact-length.ts'
import { printLength } from '../../core/units/print-length.ts'
import { words } from './words.ts'

interface Props {
  readonly tool: MeasuringTool | null
  readonly points: readonly TouchedPoint[]
  readonly outward: 1 | -1
  readonly units: 'us' | 'metric'
  readonly choose: (tool: MeasuringTool | null) => void
}

const tools = Object.keys(measuringTools) as MeasuringTool[]

/** What lengths are taken with, and what was taken. */
export function MeasureField({ tool, points, outward, units, choose }: Props) {
  const said = words()
  const taken = tool === null ? null : measureScene(tool, points, outward)
  return (
    <fieldset>
      <legend>{said.measure}</legend>
      {tools.map((one) => (
        <button
          key={one}
          type="button"
          class="button"
          aria-pressed={tool === one}
          onClick={() => choose(tool === one ? null : one)}
        >
          {said.tools[one]}
        </button>
      ))}
      {tool !== null && (
        <p class="scene-measured" role="status">
          {taken === null
            ? said.touch[tool](measuringTools[tool] - points.length)
            : said.measured(lengthWords(taken.length, units), lengthWords(upToStep(taken.doubt), units))}
        </p>
      )}
    </fieldset>
  )
}

const upToStep = (doubt: number): number => Math.ceil(doubt / tapeStep) * tapeStep

function lengthWords(length: number, units: 'us' | 'metric'): string {
  const sixteenths = Math.round(length / tapeStep)
  if (units === 'us') return printLength(exactLength(sixteenths / 16, 'in'), 'inches')
  return printLength(exactLength(Math.round(length * 1000), 'mm'), 'millimetres')
}
