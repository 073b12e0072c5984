import { useEffect, useMemo, useRef, useState } from 'preact/hooks'
import type { NearMark } from '../../documents/day-report.ts'
import { writeSvg } from '../../drawing/svg/write-svg.ts'
import { placeVerdicts } from '../../drawing/views/strip/verdict-rows.ts'
import { stripDrawing } from '../../drawing/views/strip.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import { runFace, shareAlong } from '../../operations/run-face.ts'
import { stripInput } from '../../operations/strip-input.ts'
import type { DrawnRun } from '../data/run-source.ts'
import { placeWords } from '../entry/reading-words.ts'
import { m, printIn } from '../messages.ts'
import { RunFaceView } from '../parts/run-face.tsx'
import { useAfterFrame, useFrameByFrame } from '../parts/use-after-frame.ts'
import { useMedia } from '../parts/use-media.ts'
import { goTo, type Route, requirementPath } from '../route.ts'

interface Props {
  readonly judged: JudgedRun
  /** The run as it was opened, with the strip that was drawn then. */
  readonly opened: DrawnRun
  readonly route: Extract<Route, { view: 'run' }>
  /** The place at which the walk is in the list, which the strip goes along with; null where there is no walk. */
  readonly near: string | null
  readonly nearMarks: readonly NearMark[]
}

/** A phone has none for it above what there is to do. */
const roomForStrip = '(min-width: 48rem) and (min-height: 30rem)'

const placeOf = (requirement: string): string => requirement.split('/')[0]!

/** The strip, on which every place opens the first thing to be read there. One stop for the keyboard, arrows within. */
export function StripView({ judged: latest, opened, route, near, nearMarks }: Props) {
  const judged = useAfterFrame(latest)
  const hasRoom = useMedia(roomForStrip)
  const [chosen, setShown] = useState<boolean | null>(null)
  // Where it is the matter, or the way to a place. Elsewhere it is a line until it is asked for, below which the work begins.
  const isShown = chosen ?? (route.pane === 'layout' || (hasRoom && route.pane === 'walk'))
  const frame = useRef<HTMLDivElement>(null)
  const svg = useMemo(() => {
    if (!isShown) return ''
    const print = printIn(judged.run.units)
    const isAsOpened = judged === opened.judged && print.language === 'en'
    return isAsOpened ? opened.stripSvg : writeSvg(stripDrawing(stripInput(judged, print)))
  }, [judged, opened, isShown, m])
  // The picture first, and its places made into buttons once it is on screen.
  const isOnScreen = useFrameByFrame(2, 1) === 2
  const places = useMemo(
    () =>
      isOnScreen
        ? {
            first: firstToRead(judged),
            words: placeLabels(judged, nearMarks),
            marked: new Set(nearMarks.map(({ post }) => judged.model.layout.posts[post - 1]!.id)),
          }
        : null,
    [isOnScreen, judged, nearMarks, m],
  )
  const openPlace = route.open === null ? null : placeOf(route.open)

  useEffect(() => {
    const box = frame.current
    if (box !== null && places !== null) preparePlaces(box, { ...places, openPlace })
  }, [svg, places, openPlace, isShown])

  useEffect(() => {
    const box = frame.current
    if (box !== null && isOnScreen) bringIntoView(box, openPlace ?? near)
  }, [openPlace, near, isShown, isOnScreen])

  const open = (target: EventTarget | null): void => {
    const place = target instanceof Element ? target.closest('[data-place]')?.getAttribute('data-place') : null
    const requirement = place === null || place === undefined ? undefined : places?.first.get(place)
    if (requirement !== undefined) goTo(requirementPath(route.run, requirement))
  }
  if (!isShown)
    return (
      <section class="strip folded road" aria-label={m.run.strip}>
        <button
          type="button"
          class="strip-line"
          aria-expanded={false}
          aria-label={m.run.stripShow}
          title={m.run.stripShow}
          onClick={() => setShown(true)}
        >
          <FaceOfRun judged={judged} place={openPlace ?? near} />
        </button>
      </section>
    )
  return (
    <section class="strip" aria-label={m.run.strip}>
      <p class="hint" id="strip-how">
        {m.run.stripHow}
      </p>
      <button
        type="button"
        class="button strip-fold"
        aria-expanded
        aria-label={m.run.stripHide}
        title={m.run.stripHide}
        onClick={() => setShown(false)}
      >
        ▴
      </button>
      {
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
      }
    </section>
  )
}

/** The strip as a line on the road, with what was found along it and where the walk is. */
function FaceOfRun({
  judged: { model, judgement },
  place,
}: {
  readonly judged: JudgedRun
  readonly place: string | null
}) {
  const face = useMemo(() => runFace(model, judgement.verdicts), [model, judgement])
  const at = judgement.verdicts.find((one) => one.place.id === place)?.place
  const here = at === undefined || at.kind === 'run' ? null : shareAlong(model.layout)(at.alongInches)
  return <RunFaceView face={face} here={here} />
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

interface Places {
  readonly first: ReadonlyMap<string, string>
  readonly words: ReadonlyMap<string, string>
  /** Posts near a mark on the ground. */
  readonly marked: ReadonlySet<string>
  readonly openPlace: string | null
}

/** What a screen reader says of each place: its name, its worst verdict, how many of how many, and marks near it. */
function placeLabels({ judgement, run }: JudgedRun, nearMarks: readonly NearMark[]): ReadonlyMap<string, string> {
  return new Map(
    placeVerdicts(judgement.verdicts).map(({ id, place, worst, count, applying }) => {
      const near = nearMarks
        .filter(({ post }) => place.kind === 'post' && place.number === post)
        .map(({ mark }) => mark)
      const label = m.run.placeLabel(placeWords(place, run.units), m.verdict[worst], count, applying)
      return [id, near.length === 0 ? label : `${label}. ${m.day.nearShort(near.join(', '))}`]
    }),
  )
}

/** Makes a button of the verdict sign of every place, which is the last group with its name, and marks the open place. */
function preparePlaces(box: HTMLElement, { first, words, marked, openPlace }: Places): void {
  const svg = box.querySelector('svg')!
  svg.setAttribute('role', 'group')
  svg.setAttribute('aria-label', svg.querySelector('title')?.textContent ?? '')
  const last = new Map<string, SVGGElement>()
  for (const group of svg.querySelectorAll<SVGGElement>('g[data-place]')) {
    const place = group.getAttribute('data-place')!
    group.classList.toggle('place', first.has(place))
    group.classList.toggle('open', place === openPlace)
    group.classList.toggle('near-mark', marked.has(place))
    if (first.has(place)) last.set(place, group)
  }
  const current = (openPlace === null ? undefined : last.get(openPlace)) ?? last.values().next().value
  for (const [place, group] of last) {
    const label = words.get(place) ?? ''
    group.setAttribute('role', 'button')
    group.setAttribute('aria-label', label)
    const title = group.querySelector('title')
    if (title !== null) title.textContent = label
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

/** Height of a frame that shows no more than rail and posts, pixels. */
const lowFrame = 200

/**
 * Scrolls the strip alone, not the page: to the open place, or else past the title, which the page shows itself. Where
 * there is room for little more than the rail it begins where the walk begins.
 */
function bringIntoView(box: HTMLElement, place: string | null): void {
  const isUntouched = box.scrollTop === 0 && box.scrollLeft === 0
  const isLow = box.clientHeight < lowFrame
  const frame = box.getBoundingClientRect()
  if (isUntouched && !isLow) {
    const tops = [...box.querySelectorAll('[data-place^="traffic"]')].map((one) => one.getBoundingClientRect().top)
    if (tops.length > 0) box.scrollTop = Math.min(...tops) - frame.top - 8
  }
  const sought = place ?? (isUntouched && isLow ? 'post-1' : null)
  const target = sought === null ? null : box.querySelector(`[data-place="${CSS.escape(sought)}"]`)
  if (target === null) return
  const { left, width, top: upper, height } = target.getBoundingClientRect()
  box.scrollLeft += left + width / 2 - frame.left - frame.width / 2
  if (upper < frame.top || upper + height > frame.bottom)
    box.scrollTop += upper + height / 2 - frame.top - frame.height / 2
}
