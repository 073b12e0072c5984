import { useEffect, useMemo, useRef, useState } from 'preact/hooks'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import { writeStrip } from '../../operations/write-strip.ts'
import { m } from '../messages.ts'
import { goTo, type Route, requirementPath } from '../route.ts'

interface Props {
  readonly judged: JudgedRun
  readonly route: Extract<Route, { view: 'run' }>
}

const placeOf = (requirement: string): string => requirement.split('/')[0]!

/** The strip, on which every place opens the first thing to be read there. One stop for the keyboard, arrows within. */
export function StripView({ judged, route }: Props) {
  const [isShown, setShown] = useState(true)
  const frame = useRef<HTMLDivElement>(null)
  const svg = useMemo(() => writeStrip(judged, 'web')[0]!, [judged])
  const first = useMemo(() => firstToRead(judged), [judged])
  const openPlace = route.open === null ? null : placeOf(route.open)

  useEffect(() => {
    const box = frame.current
    if (box !== null) preparePlaces(box, first, openPlace)
  }, [svg, first, openPlace, isShown])

  useEffect(() => {
    const box = frame.current
    if (box !== null) bringIntoView(box, openPlace)
  }, [openPlace, isShown])

  const open = (target: EventTarget | null): void => {
    const place = target instanceof Element ? target.closest('[data-place]')?.getAttribute('data-place') : null
    const requirement = place === null || place === undefined ? undefined : first.get(place)
    if (requirement !== undefined) goTo(requirementPath(route.run, requirement))
  }
  return (
    <section class="strip" aria-label={m.run.strip}>
      <div class="strip-bar">
        <span class="hint" id="strip-how">
          {m.run.stripHow}
        </span>
        <button type="button" class="button small" aria-expanded={isShown} onClick={() => setShown(!isShown)}>
          {isShown ? m.run.stripHide : m.run.stripShow}
        </button>
      </div>
      {isShown && (
        // biome-ignore lint/a11y/useSemanticElements: the places in it are buttons of a picture
        <div
          ref={frame}
          class="strip-frame"
          role="group"
          aria-label={m.run.strip}
          aria-describedby="strip-how"
          dangerouslySetInnerHTML={{ __html: svg }}
          onClick={({ target }) => open(target)}
          onKeyDown={(event) => {
            if (event.key === 'Enter' || event.key === ' ') {
              event.preventDefault()
              open(event.target)
            } else if (frame.current !== null && moveFocus(frame.current, event.key)) event.preventDefault()
          }}
        />
      )}
    </section>
  )
}

/** The requirement that a place opens: its first that fails, or is not proven, or else its first. */
function firstToRead({ judgement }: JudgedRun): ReadonlyMap<string, string> {
  const first = new Map<string, string>()
  const ranks = new Map<string, number>()
  for (const { requirement, verdict } of judgement.verdicts) {
    const place = placeOf(requirement)
    const rank = { fails: 0, 'too close': 1, unread: 1, meets: 2, 'does not apply': 2 }[verdict]
    if (rank < (ranks.get(place) ?? 3)) {
      ranks.set(place, rank)
      first.set(place, requirement)
    }
  }
  return first
}

const buttonsIn = (box: HTMLElement): SVGGElement[] => [...box.querySelectorAll<SVGGElement>('g[role="button"]')]

/** Makes a button of the verdict sign of every place, which is the last group with its name, and marks the open place. */
function preparePlaces(box: HTMLElement, first: ReadonlyMap<string, string>, openPlace: string | null): void {
  const svg = box.querySelector('svg')!
  svg.setAttribute('role', 'group')
  svg.setAttribute('aria-label', svg.querySelector('title')?.textContent ?? '')
  const last = new Map<string, SVGGElement>()
  for (const group of svg.querySelectorAll<SVGGElement>('g[data-place]')) {
    const place = group.getAttribute('data-place')!
    group.classList.toggle('place', first.has(place))
    group.classList.toggle('open', place === openPlace)
    if (first.has(place)) last.set(place, group)
  }
  const current = (openPlace === null ? undefined : last.get(openPlace)) ?? last.values().next().value
  for (const group of last.values()) {
    group.setAttribute('role', 'button')
    group.setAttribute('aria-label', group.querySelector('title')?.textContent ?? '')
    group.setAttribute('tabindex', group === current ? '0' : '-1')
  }
}

function moveFocus(box: HTMLElement, key: string): boolean {
  const buttons = buttonsIn(box).sort((a, b) => leftOf(a) - leftOf(b))
  const at = buttons.indexOf(document.activeElement as SVGGElement)
  const to = { ArrowRight: at + 1, ArrowDown: at + 1, ArrowLeft: at - 1, ArrowUp: at - 1, Home: 0, End: -1 }[key]
  if (to === undefined || at === -1) return false
  const next = key === 'End' ? buttons.at(-1)! : buttons[Math.min(Math.max(to, 0), buttons.length - 1)]!
  for (const button of buttons) button.setAttribute('tabindex', button === next ? '0' : '-1')
  next.focus()
  return true
}

const leftOf = (element: Element): number => element.getBoundingClientRect().left

/** Scrolls the strip alone, not the page: to the open place, or else past the title, which the page shows itself. */
function bringIntoView(box: HTMLElement, place: string | null): void {
  const frame = box.getBoundingClientRect()
  const target = place === null ? null : box.querySelector(`[data-place="${CSS.escape(place)}"]`)
  const top = box.querySelector('[data-place="traffic"]')?.getBoundingClientRect().top
  if (top !== undefined && box.scrollTop === 0) box.scrollTop = top - frame.top - 8
  if (target === null || target === undefined) return
  const { left, width, top: upper, height } = target.getBoundingClientRect()
  box.scrollLeft += left + width / 2 - frame.left - frame.width / 2
  if (upper < frame.top || upper + height > frame.bottom)
    box.scrollTop += upper + height / 2 - frame.top - frame.height / 2
}
