import type { Layer } from '../../drawing.ts'
import { verdictLayers } from '../../verdict-signs.ts'

const layer = (name: string, penPoints: number, dash: Layer['dash'] = 'solid', ink = '#111111'): Layer => ({
  name,
  penPoints,
  dash,
  ink,
})

export const figureLayers: readonly Layer[] = [
  layer('frame', 0.5, 'solid', '#777777'),
  layer('ground', 0.8),
  layer('post', 0.8),
  layer('block', 0.7),
  layer('rail', 1.3),
  layer('ribs', 0.4, 'solid', '#555555'),
  layer('behind', 0.6, 'dashed', '#333333'),
  layer('part', 0.9),
  layer('cable', 1.4),
  layer('hole', 0.7),
  layer('string', 0.6, 'dashed', '#333333'),
  layer('traffic', 0.9),
  layer('dimensions', 0.5),
  layer('text', 0.5),
  ...verdictLayers,
]
