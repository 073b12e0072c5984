import type { Layer } from '../../drawing.ts'
import { verdictLayers } from '../../verdict-signs.ts'

const layer = (name: string, penPoints: number, dash: Layer['dash'] = 'solid', ink = '#111111'): Layer => ({
  name,
  penPoints,
  dash,
  ink,
})

export const stripLayers: readonly Layer[] = [
  layer('line of the run', 0.5, 'dash-dot', '#555555'),
  layer('traffic', 0.9),
  layer('edge of traffic side', 0.7, 'dashed', '#555555'),
  layer('obstructions', 0.7),
  layer('rail', 1.5),
  layer('nested rail', 1),
  layer('blocks', 0.6),
  layer('posts', 0.8),
  layer('omitted posts', 0.8, 'dashed'),
  layer('ends', 0.9),
  layer('standing run', 1.5, 'dotted'),
  layer('need', 0.8),
  layer('rail that counts', 0.8),
  layer('parts', 0.6),
  layer('dimensions', 0.5, 'solid', '#333333'),
  layer('text', 0.5),
  layer('match lines', 0.8, 'dash-dot'),
  ...verdictLayers,
]
