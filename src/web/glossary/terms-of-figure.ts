import type { FigureKind } from '../../core/hardware/hardware-sheet.ts'
import type { TermId } from '../messages/glossary-en.ts'

/** Words of the trade that a requirement with a figure of this kind uses; the first one is what the figure is of. */
export const termsOfFigure: Readonly<Record<FigureKind, readonly [TermId, ...TermId[]]>> = {
  'rail-height': ['railHeight', 'finishGrade', 'guardBand'],
  'flare-offset': ['flare', 'tangent', 'adjacentTraffic'],
  straightness: ['straightness', 'panel', 'splice'],
  'post-spacing': ['postSpacing'],
  'panel-length': ['panel', 'splice'],
  'slotted-panel': ['slottedPanel', 'panel'],
  lap: ['lap', 'splice', 'adjacentTraffic'],
  'splice-position': ['splice', 'panel'],
  'rail-bolt': ['railBolt'],
  block: ['block'],
  'hinge-side': ['hinge', 'breakawayPost', 'head'],
  'stub-height': ['stub', 'breakawayPost', 'finishGrade'],
  'slot-set': ['postSlots', 'head'],
  'head-holes': ['head'],
  'bearing-plate': ['bearingPlate', 'anchorCable'],
  'cable-play': ['anchorCable'],
  'bracket-opening': ['bracket', 'anchorCable', 'head'],
  'post-kind': ['breakawayPost', 'hinge', 'soilTube'],
  'omitted-post': ['omittedPost', 'nested', 'postSpacing'],
}
