import type { Layout } from '../../core/layout/layout.ts'

const [height, railTop, railBottom] = [40, 10, 20]

interface Props {
  readonly layout: Layout
  /** Of all layouts that are compared, from the run's datum, inches: each lies where it would stand. */
  readonly from: number
  readonly to: number
}

/**
 * A layout small enough to be compared: panels of other than standard length stand out, and so do posts that are moved,
 * special or left out. What it shows stands beside it in words, so it says nothing to who hears the page.
 */
export function LayoutMiniature({ layout, from, to }: Props) {
  const width = 600
  const at = (along: number): number => ((along + layout.postOneAtInches - from) / (to - from)) * (width - 8) + 4
  return (
    <svg class="layout-miniature" viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
      {layout.panels.map(({ id, fromInches, toInches, role }) => (
        <rect
          key={id}
          class={role === 'adapter' || role === 'converting' || role === 'end only' ? 'odd' : role}
          x={at(fromInches) + 1.5}
          y={railTop}
          width={Math.max(1, at(toInches) - at(fromInches) - 3)}
          height={railBottom - railTop}
        />
      ))}
      {layout.posts.map(({ id, alongInches, state }) => (
        <path key={id} class={state === 'regular' ? 'post' : 'post changed'} d={`M${at(alongInches)} 22v14`} />
      ))}
      {layout.omitted.map(({ alongInches }) => (
        <path key={alongInches} class="post omitted" d={`M${at(alongInches) - 4} 26l8 8m0-8l-8 8`} />
      ))}
    </svg>
  )
}
