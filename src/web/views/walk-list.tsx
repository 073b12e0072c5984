import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks'
import type { Requirement } from '../../core/requirements/requirement.ts'
import type { VerdictWord } from '../../core/verdicts/verdict.ts'
import { plainText } from '../data/plain-text.ts'
import { m, say } from '../messages.ts'
import { Fold } from '../parts/fold.tsx'
import { useFrameByFrame } from '../parts/use-after-frame.ts'
import { VerdictMark } from '../parts/verdict-sign.tsx'
import { requirementPath } from '../route.ts'
import { chosenGroups, groupByPlace, type PlaceGroup, type VerdictOf, type WalkWish, worstOf } from './walk-groups.ts'
import { keepWalkPlace, walkPlace } from './walk-place.ts'
import { WalkWishFields } from './walk-wish-fields.tsx'

interface Props {
  readonly requirements: readonly Requirement[]
  readonly units: 'us' | 'metric'
  readonly verdictOf: VerdictOf
  readonly run: string
  readonly open: string | null
  /** The next that is unread, whose place is not folded. */
  readonly next: string | null
  /** Tells the place of the list that is at the top of the screen. */
  readonly near: (place: string) => void
}

/** Groups drawn in the first frame, about three screens of a phone, and the most in a later one. */
const drawnAtFirst = 40
const drawnAtOnce = 240

/** What is found stands open as long as it is no more than this. */
const fewEnough = 40

/** Every requirement in walking order, folded by place; what is searched and left folded is found again as it was. */
export function WalkList({ requirements, units, verdictOf, run, open, next, near }: Props) {
  const [wish, setWish] = useState<WalkWish>(() => walkPlace(run))
  const [folds, setFolds] = useState(() => walkPlace(run).folds)
  const frame = useRef<HTMLElement>(null)
  const all = useMemo(() => groupByPlace(requirements), [requirements])
  const textOf = useMemo(() => textsOf(units), [units, m])
  const groups = useMemo(() => chosenGroups(all, wish, verdictOf, textOf), [all, wish, verdictOf, textOf])
  const drawn = useFrameByFrame(groups.length, drawnAtFirst, drawnAtOnce)
  const isWhole = drawn >= groups.length
  const shown = groups.reduce((sum, { members }) => sum + members.length, 0)
  const last = open ?? walkPlace(run).last
  useWhereItWas(frame, run, open, isWhole)
  useNear(frame, near, open === null, groups, drawn)
  useEffect(() => keepWalkPlace(run, { search: wish.search, verdict: wish.verdict, folds }), [run, wish, folds])
  return (
    <nav ref={frame} class="walk-list" aria-label={m.walk.requirements} aria-busy={!isWhole}>
      <WalkWishFields
        wish={wish}
        verdicts={[...verdictOf.values()]}
        change={(changes) => {
          // What was folded by hand was folded in another list.
          setFolds(new Map())
          setWish((before) => ({ ...before, ...changes }))
        }}
      />
      {groups.length === 0 && <p class="pick">{m.walk.noneFound}</p>}
      {groups.slice(0, drawn).map((group) => {
        const has = (id: string | null): boolean => group.members.some((one) => one.id === id)
        return (
          <PlaceFold
            key={group.id}
            group={group}
            words={group.members.map(({ id }) => verdictOf.get(id)).join()}
            units={units}
            run={run}
            current={has(open) ? open : null}
            isOpen={folds.get(group.id) ?? (shown <= fewEnough || has(last) || has(next))}
            fold={(isOpen) => setFolds((before) => new Map(before).set(group.id, isOpen))}
          />
        )
      })}
    </nav>
  )
}

/** What the list says of a requirement, to be searched: said once, since each key searches all of them. */
function textsOf(units: Props['units']): (requirement: Requirement) => string {
  const texts = new Map<string, string>()
  return ({ id, place, must }) => {
    const text = texts.get(id) ?? plainText(`${say(place, units)} ${say(must, units)}`)
    texts.set(id, text)
    return text
  }
}

interface FoldProps {
  readonly group: PlaceGroup
  /** Words of the verdicts, in the order of the members. */
  readonly words: string
  readonly units: Props['units']
  readonly run: string
  /** Id of the one that is open. */
  readonly current: string | null
  readonly isOpen: boolean
  readonly fold: (isOpen: boolean) => void
}

/** Drawn anew only when something in it is another: of a long run a reading changes one of a thousand. */
const PlaceFold = ({ group, words, units, run, current, isOpen, fold }: FoldProps) =>
  useMemo(() => {
    const { place, members } = group
    const each = words.split(',') as VerdictWord[]
    const { worst, count, applying } = worstOf(each)
    return (
      <Fold
        level={2}
        title={place === null ? m.walk.holds : say(place, units)}
        beside={<VerdictMark word={worst} count={count} of={applying} />}
        class={place === null ? 'hold' : ''}
        at={place?.id}
        isOpen={isOpen}
        fold={fold}
      >
        {() => (
          <ul class="plain">
            {members.map((requirement, i) => (
              <li key={requirement.id}>
                <a
                  class="row-link"
                  href={requirementPath(run, requirement.id)}
                  data-requirement={requirement.id}
                  aria-current={requirement.id === current ? 'true' : undefined}
                >
                  <VerdictMark word={each[i]!} />
                  <span class="must">
                    {place === null
                      ? `${say(requirement.place, units)}: ${say(requirement.must, units)}`
                      : say(requirement.must, units)}
                  </span>
                </a>
              </li>
            ))}
          </ul>
        )}
      </Fold>
    )
  }, [group, words, units, run, current, isOpen, m])

type Frame = { readonly current: HTMLElement | null }

/**
 * Keeps where the list is, and comes back there when what was open is left, with the row of what was open last in sight.
 * On a wide screen the list scrolls by itself, on a narrow one with the page.
 */
function useWhereItWas(frame: Frame, run: string, open: string | null, isWhole: boolean): void {
  const before = useRef(open)
  useLayoutEffect(() => {
    const list = frame.current
    if (list === null || !isWhole) return
    const scroller = scrollerOf(list)
    if (open !== null) {
      keepWalkPlace(run, { last: open, lastAt: walkPlace(run).last === open ? walkPlace(run).lastAt : null })
      if (scroller === list) bringIntoSight(rowOf(list, open), list, coveredOf(list))
      before.current = open
      return
    }
    const { top, last, lastAt } = walkPlace(run)
    if (top > 0) scroller.scrollTop = top
    const row = last === null ? null : rowOf(list, last)
    // What lies above the row has the height that was taken for it until it was in sight: pixels from the top mislead.
    const putBack = (): void => {
      if (row !== null && lastAt !== null && lastAt < scroller.clientHeight)
        scroller.scrollTop += topIn(row, scroller) - lastAt
    }
    putBack()
    bringIntoSight(row, scroller, lastAt === null ? coveredOf(scroller) : 0)
    const settling = requestAnimationFrame(putBack)
    if (before.current !== null) row?.focus({ preventScroll: true })
    before.current = null
    const keep = (): void => keepWalkPlace(run, { top: scroller.scrollTop, lastAt: null })
    const pressed = ({ target }: Event): void => {
      const link = target instanceof Element ? target.closest<HTMLElement>('[data-requirement]') : null
      if (link !== null) keepWalkPlace(run, { last: link.dataset.requirement!, lastAt: topIn(link, scroller) })
    }
    const source = scroller === list ? list : window
    source.addEventListener('scroll', keep, { passive: true })
    list.addEventListener('click', pressed)
    return () => {
      cancelAnimationFrame(settling)
      source.removeEventListener('scroll', keep)
      list.removeEventListener('click', pressed)
    }
  }, [frame, run, open, isWhole])
}

const topIn = (row: Element, scroller: Element): number =>
  row.getBoundingClientRect().top - (scroller === document.documentElement ? 0 : scroller.getBoundingClientRect().top)

/** What lies over the ends of the page: the bar with the next one. A list that scrolls by itself ends above it. */
const coveredOf = (scroller: Element): number => (scroller === document.documentElement ? 96 : 16)

const rowOf = (list: HTMLElement, requirement: string): HTMLElement | null =>
  list.querySelector(`[data-requirement="${CSS.escape(requirement)}"]`)

const scrollerOf = (list: HTMLElement): Element =>
  getComputedStyle(list).overflowY === 'auto' ? list : document.documentElement

function bringIntoSight(target: HTMLElement | null, scroller: Element, covered: number): void {
  if (target === null) return
  const { top, bottom, height } = target.getBoundingClientRect()
  if (height === 0) return
  const isPage = scroller === document.documentElement
  const box = isPage ? { top: 0, bottom: window.innerHeight } : scroller.getBoundingClientRect()
  if (top < box.top + covered || bottom > box.bottom - covered)
    scroller.scrollTop += top - box.top - (box.bottom - box.top) / 3
}

/** Tells the place at which the list is, as long as nothing is open: then that is where the walk is. */
function useNear(
  frame: Frame,
  near: (place: string) => void,
  isWatched: boolean,
  groups: readonly PlaceGroup[],
  drawn: number,
): void {
  useEffect(() => {
    const list = frame.current
    if (list === null || !isWatched) return
    // A band below the strip: the group that enters it is where the walk is.
    const watcher = new IntersectionObserver(
      (entries) => {
        const place = entries.find(({ isIntersecting }) => isIntersecting)?.target.getAttribute('data-at')
        if (place !== null && place !== undefined) near(place)
      },
      { rootMargin: '-30% 0px -60% 0px' },
    )
    for (const group of list.querySelectorAll('[data-at]')) watcher.observe(group)
    return () => watcher.disconnect()
  }, [frame, near, isWatched, groups, drawn])
}
