import { useState } from 'preact/hooks'
import type { NumberedDrill } from '../../core/drill/drill-number.ts'
import { faultSizes } from '../../core/drill/faults.ts'
import type { DrillWish } from '../../core/drill/make-drill.ts'
import { nameOf } from '../../core/hardware/sheet-text.ts'
import { type PracticeRun, practiceRuns, sheetsOfPractice } from '../../operations/practice-runs.ts'
import { say } from '../messages.ts'
import { randomSeed } from './begin-drill.ts'
import { words } from './words.ts'

interface Props {
  readonly begin: (drill: NumberedDrill, minutes: number | null) => void
}

/** A drill by what it is to have; its seed is drawn. */
export function ChooseDrill({ begin }: Props) {
  const w = words()
  const [wish, setWish] = useState<Omit<NumberedDrill, 'seed'>>({ site: 3, faults: 6, size: 'mixed', decoys: 2 })
  const [minutes, setMinutes] = useState('')
  const change = (changes: Partial<NumberedDrill>): void => setWish({ ...wish, ...changes })
  return (
    <form
      class="drill-form"
      onSubmit={(event) => {
        event.preventDefault()
        const limit = Math.round(Number(minutes))
        begin({ ...wish, seed: randomSeed() }, limit > 0 ? limit : null)
      }}
    >
      <label>
        <span>{w.run}</span>
        <select value={wish.site} onChange={({ currentTarget: { value } }) => change({ site: Number(value) })}>
          {practiceRuns.map((practice, site) => (
            <option key={site} value={site}>
              {nameOfPractice(practice)}
            </option>
          ))}
        </select>
      </label>
      <label>
        <span>{w.size}</span>
        <select
          value={wish.size}
          onChange={({ currentTarget: { value } }) => change({ size: value as DrillWish['size'] })}
        >
          {([...faultSizes, 'mixed'] as const).map((size) => (
            <option key={size} value={size}>
              {w.sizes[size]}
            </option>
          ))}
        </select>
      </label>
      <Count words={w.faults} value={wish.faults} least={1} most={12} set={(faults) => change({ faults })} />
      <Count words={w.decoys} value={wish.decoys} least={0} most={9} set={(decoys) => change({ decoys })} />
      <label>
        <span>{w.minutes}</span>
        <input
          inputMode="numeric"
          autocomplete="off"
          value={minutes}
          onInput={({ currentTarget: { value } }) => setMinutes(value.replace(/\D/g, ''))}
        />
      </label>
      <button type="submit" class="button main">
        {w.random}
      </button>
    </form>
  )
}

function nameOfPractice(practice: PracticeRun): string {
  const [first, second] = sheetsOfPractice(practice).map((sheet) => say(nameOf(sheet)))
  return second === undefined ? words().alone(first!) : words().between(first!, second)
}

interface CountProps {
  readonly words: string
  readonly value: number
  readonly least: number
  readonly most: number
  readonly set: (value: number) => void
}

const Count = ({ words: label, value, least, most, set }: CountProps) => (
  <label>
    <span>{label}</span>
    <select value={value} onChange={({ currentTarget }) => set(Number(currentTarget.value))}>
      {Array.from({ length: most - least + 1 }, (_, i) => (
        <option key={i} value={least + i}>
          {least + i}
        </option>
      ))}
    </select>
  </label>
)
