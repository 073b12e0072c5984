import type { ComponentChildren } from 'preact'
import { useEffect, useMemo, useRef, useState } from 'preact/hooks'
import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import type { Requirement, RequirementChoice } from '../../core/requirements/requirement.ts'
import type { Drawing } from '../../drawing/drawing.ts'
import { m, printIn, say } from '../messages.ts'
import { partOf } from '../parts/later-part.tsx'
import { Picture } from '../parts/picture.tsx'
import { orderedChoices } from './ordered-choices.ts'

const figures = partOf(() => import('./figure-of.ts'))

interface Props {
  readonly requirement: Requirement
  /** Null where the run has it no more; then there are no pictures. */
  readonly sheet: HardwareSheet | null
  readonly units: 'us' | 'metric'
  readonly chosen: string | null
  readonly choose: (id: string, byFinger: boolean) => void
}

/** What is seen, chosen by its picture where there is one: none is called right before it is chosen. */
export function SeenChoices({ requirement, sheet, units, chosen, choose }: Props) {
  const { figure } = requirement
  const [part, setPart] = useState(figures.here)
  const isDrawn = figure !== null && sheet !== null
  useEffect(() => {
    // Where they cannot be fetched the words are there to choose by.
    if (isDrawn && part === null) void figures.fetch().then(setPart)
  }, [])
  const { pair, others } = useMemo(() => orderedChoices(requirement.look), [requirement])
  const halves = useMemo(
    () => (isDrawn && part?.ok ? part.value.halvesOf(figure, requirement, sheet, printIn(units)) : null),
    [isDrawn, part, figure, requirement, sheet, units, m],
  )
  const isPictured = isDrawn && (part === null || halves !== null) && pair.length === 2
  const pictureOf = ({ right }: RequirementChoice): Drawing | null => halves?.[right ? 'right' : 'wrong'] ?? null
  return (
    <Choices
      legend={m.entry.choice}
      name="choice"
      choices={[...pair, ...others].map((one) => ({
        id: one.id,
        words: say(one.label, units),
        picture: isPictured && pair.includes(one) ? <ChoicePicture drawing={pictureOf(one)} /> : null,
      }))}
      chosen={chosen}
      choose={choose}
    />
  )
}

/** As high before it is drawn as after. */
const ChoicePicture = ({ drawing }: { readonly drawing: Drawing | null }) => (
  <span class="choice-picture" aria-hidden="true">
    {drawing !== null && <Picture class="half" drawing={drawing} />}
  </span>
)

interface ChoicesProps {
  readonly legend: string
  /** A side is asked beside a length, which the hand comes to first. */
  readonly name: 'choice' | 'side'
  readonly choices: readonly { readonly id: string; readonly words: string; readonly picture?: ComponentChildren }[]
  readonly chosen: string | null
  readonly choose: (id: string, byFinger: boolean) => void
}

export function Choices({ legend, name, choices, chosen, choose }: ChoicesProps) {
  // What a finger touches is meant; arrow keys pass over answers that are not.
  const byFinger = useRef(false)
  return (
    <fieldset
      class={`choices choices-${name}`}
      onPointerDown={({ pointerType }) => {
        byFinger.current = pointerType === 'touch'
      }}
      onKeyDown={() => {
        byFinger.current = false
      }}
    >
      <legend>{legend}</legend>
      {choices.map(({ id, words, picture }, i) => (
        <label key={id} class={picture ? 'choice pictured' : 'choice'}>
          {picture}
          <span class="choice-words">
            <input
              type="radio"
              name={name}
              value={id}
              checked={chosen === id}
              data-first={name === 'choice' && (chosen === null ? i === 0 : chosen === id)}
              data-side={name === 'side' || undefined}
              onChange={() => choose(id, byFinger.current)}
            />
            <span>{words}</span>
          </span>
        </label>
      ))}
    </fieldset>
  )
}
