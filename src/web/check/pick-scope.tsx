import { m } from '../messages.ts'
import { Back } from './back.tsx'
import type { End } from './pick-hardware.tsx'
import { nameOf } from './unit-card.tsx'

/** How much is checked, and whether the traffic beside this end comes to it or leaves by it. */
export interface Scope {
  readonly isWhole: boolean
  readonly traffic: 'comes to it' | 'leaves by it'
}

interface Props {
  readonly end: End
  readonly pick: (scope: Scope) => void
  readonly back: () => void
}

/** This end alone, or all of the run; what is right here hangs on which way the traffic goes. */
export function PickScope({ end, pick, back }: Props) {
  const words = m.check
  // An anchor that is not made to be struck mostly stands where traffic leaves by it.
  const likely = typeof end === 'object' && !end.crashworthy ? 'leaves by it' : 'comes to it'
  const rare = likely === 'leaves by it' ? 'comes to it' : 'leaves by it'
  return (
    <>
      <Back back={back} />
      <h1>{typeof end === 'object' ? nameOf(end) : words.unknownEnd}</h1>
      <p>{words.scopeHow}</p>
      {[false, true].map((isWhole) => (
        <fieldset key={String(isWhole)} class="check-others check-scope">
          <legend>{isWhole ? words.wholeRun : words.endOnly}</legend>
          {([likely, rare] as const).map((traffic) => (
            <button
              key={traffic}
              type="button"
              class={!isWhole && traffic === likely ? 'button main' : 'button'}
              aria-label={words.scope(isWhole, traffic)}
              onClick={() => pick({ isWhole, traffic })}
            >
              <Traffic {...{ isWhole, traffic }} />
              {words.traffic[traffic]}
            </button>
          ))}
        </fieldset>
      ))}
    </>
  )
}

/** The end at the left, as much of its run as is checked, and which way the lane beside it goes. */
const Traffic = ({ isWhole, traffic }: Scope) => (
  <svg viewBox="0 0 120 44" aria-hidden="true">
    <path d={isWhole ? 'M20 8h84v8H20z' : 'M20 8h44v8H20z'} class="filled" />
    {!isWhole && <path d="M68 12h36" class="dashed" />}
    <path d={isWhole ? 'M16 4h8v16h-8zM100 4h8v16h-8z' : 'M16 4h8v16h-8z'} class="filled" />
    <path d={traffic === 'comes to it' ? 'M8 34h60m-8 -6l8 6l-8 6' : 'M112 34h-60m8 -6l-8 6l8 6'} />
  </svg>
)

interface OpposingProps {
  /** Null for not sure. */
  readonly answer: (reaches: boolean | null) => void
  readonly back: () => void
}

/** Whether the end that traffic leaves by can be struck head-on all the same. */
export function OpposingTraffic({ answer, back }: OpposingProps) {
  const words = m.check.opposing
  return (
    <>
      <Back back={back} />
      <h1>{words.question}</h1>
      <p>{words.how}</p>
      <div class="check-others check-scope">
        <button type="button" class="button" onClick={() => answer(true)}>
          {words.yes}
        </button>
        <button type="button" class="button" onClick={() => answer(false)}>
          {words.no}
        </button>
        <button type="button" class="button" onClick={() => answer(null)}>
          {m.check.notSure}
        </button>
      </div>
    </>
  )
}
