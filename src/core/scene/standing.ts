import { sheetOf } from '../layout/sheet-of.ts'
import { endSheetOf, type RunModel } from '../requirements/run-model.ts'
import { railLine } from '../staking/rail-line.ts'
import { exactLength, toMetres } from '../units/exact-length.ts'
import { inches, type Metres } from '../units/quantity.ts'
import { drawnRailTop } from './drawn-sizes.ts'

/** A run as it stands, or is taken to stand: what a scene is built from, piece by piece in the order of the layout. */
export interface Standing {
  readonly posts: readonly StandingPost[]
  readonly panels: readonly StandingPanel[]
  /** What was seen of a requirement, by its id; null where nobody looked. */
  readonly seen: (requirement: string) => Seen | null
}

export interface StandingPost {
  readonly id: string
  /** Along the rail from where the centre of post 1 belongs. */
  readonly along: Metres
  /** Face of rail from the line of the run, extended; positive away from the road. */
  readonly away: Metres
  /** Top of rail above finish grade. */
  readonly top: Metres
  /** Top of the part that stays in the ground; null where it has none. */
  readonly stub: Metres | null
}

export interface StandingPanel {
  readonly id: string
  /** Splice centre to splice centre. */
  readonly length: Metres
  /** Its middle from the chord between its ends; positive away from the road. */
  readonly bow: Metres
}

export type Seen =
  | { readonly kind: 'choice'; readonly choice: string; readonly right: boolean }
  | { readonly kind: 'length'; readonly length: Metres }

/** Top of rail where no sheet states it: drawn, and said to be a sign. */
const unstatedTop = 31

/** The run as layout and sheets have it: heights and stubs at what is nominal, or else at the limit that is stated. */
export function standingAsAsked(model: RunModel): Standing {
  const line = railLine(model)
  return {
    posts: model.layout.posts.map((post) => {
      const stub = endSheetOf(model, post.unit)?.posts.find(({ number }) => number === post.ownNumber)?.stub ?? 'none'
      return {
        id: post.id,
        along: inches(post.alongInches),
        away: line.ok ? line.value.awayAt(inches(post.alongInches)) : 0,
        top: inches(drawnRailTop(sheetOf(model, post.unit).railHeight) ?? unstatedTop),
        stub: stub === 'none' || stub.high === 'notStated' ? null : toMetres(exactLength(stub.high, stub.unit)),
      }
    }),
    panels: model.layout.panels.map(({ id, inches: length }) => ({ id, length: inches(length), bow: 0 })),
    seen: () => null,
  }
}

/** The same run with every height and offset `factor` times as far from what was asked. */
export function exaggerated(standing: Standing, asked: Standing, factor: number): Standing {
  const far = (is: Metres, ought: Metres): Metres => ought + factor * (is - ought)
  return {
    ...standing,
    posts: standing.posts.map((post, i) => ({
      ...post,
      away: far(post.away, asked.posts[i]!.away),
      top: far(post.top, asked.posts[i]!.top),
    })),
    panels: standing.panels.map((panel) => ({ ...panel, bow: factor * panel.bow })),
  }
}
