import type { Layer } from '../../drawing.ts'

const layer = (name: string, penPoints: number, dash: Layer['dash'] = 'solid', ink = '#111111'): Layer => ({
  name,
  penPoints,
  dash,
  ink,
})

/** Layers of the elevation and of the detail of an end. */
export const elevationLayers: readonly Layer[] = [
  layer('finish grade', 0.9),
  layer('ground', 0.5, 'solid', '#777777'),
  layer('obstructions', 0.7),
  layer('blocks', 0.6),
  layer('rail', 1),
  layer('ribs', 0.4, 'solid', '#555555'),
  layer('splices', 0.6),
  layer('posts', 0.8),
  layer('posts in the ground', 0.6, 'dashed'),
  layer('omitted posts', 0.8, 'dashed'),
  layer('ends', 0.9),
  layer('anchor cable', 1.2),
  layer('standing run', 1.5, 'dotted'),
  layer('line of the run', 0.5, 'dash-dot', '#555555'),
  layer('traffic', 0.9),
  layer('need', 0.8),
  layer('rail that counts', 0.8),
  layer('parts', 0.6),
  layer('dimensions', 0.5, 'solid', '#333333'),
  layer('callouts', 0.5),
  layer('text', 0.5),
  layer('match lines', 0.8, 'dash-dot'),
]
