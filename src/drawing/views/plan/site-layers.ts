import type { Layer } from '../../drawing.ts'

const layer = (name: string, penPoints: number, dash: Layer['dash'] = 'solid', ink = '#111111'): Layer => ({
  name,
  penPoints,
  dash,
  ink,
})

/** Layers of the plan and of the cross section of a site. */
export const siteLayers: readonly Layer[] = [
  layer('travelled way', 1),
  layer('centre line', 0.7),
  layer('lane line', 0.6, 'dashed'),
  layer('shoulder', 0.4, 'solid', '#555555'),
  layer('traffic', 0.8),
  layer('ground', 0.8),
  layer('ground not stated', 0.6, 'dotted', '#555555'),
  layer('clear zone', 0.9, 'dashed', '#14532d'),
  layer('shy line', 0.9, 'dotted', '#333333'),
  layer('hazards', 0.8, 'solid', '#7a1f1f'),
  layer('driveways', 0.7),
  layer('runout path', 0.9, 'dash-dot', '#0b3d91'),
  layer('barrier', 1.8),
  layer('end units', 1.1),
  layer('need', 0.8),
  layer('dimensions', 0.4, 'solid', '#333333'),
  layer('leaders', 0.3, 'solid', '#555555'),
  layer('handles', 0.8, 'solid', '#0b3d91'),
  layer('text', 0.5),
]
