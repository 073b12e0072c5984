import { type DrawnOn, strokePens, strokesPath } from '../../drawing/svg/photo-strokes.ts'

/** What was drawn on a photo, over the picture as it is shown: whole within its box, in the middle. */
export const StrokesOver = ({ drawn }: { readonly drawn: DrawnOn }) => (
  <svg class="strokes-over" viewBox={`0 0 ${drawn.width} ${drawn.height}`} aria-hidden="true">
    {strokePens(drawn).map(({ ink, pen }) => (
      <path key={ink} d={strokesPath(drawn)} stroke={ink} stroke-width={pen} />
    ))}
  </svg>
)
