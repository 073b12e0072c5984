import type { HardwareSheet } from '../core/hardware/hardware-sheet.ts'
import bridgeEnd31 from './landed/bridge-end-31-1.0.0.json' with { type: 'json' }
import buriedEnd31 from './landed/buried-end-31-1.0.0.json' with { type: 'json' }
import flaredTerminal27 from './landed/flared-terminal-27-3-4-1.1.0.json' with { type: 'json' }
import flaredTerminal31 from './landed/flared-terminal-31-1.1.0.json' with { type: 'json' }
import tangentTerminal31 from './landed/tangent-terminal-31-1.1.0.json' with { type: 'json' }
import trailingAnchor27 from './landed/trailing-anchor-27-3-4-1.1.0.json' with { type: 'json' }
import trailingAnchor31 from './landed/trailing-anchor-31-1.1.0.json' with { type: 'json' }
import wBeamMidspan31 from './landed/w-beam-midspan-31-1.1.0.json' with { type: 'json' }
import wBeamPostSplice27 from './landed/w-beam-post-splice-27-3-4-1.1.0.json' with { type: 'json' }

/**
 * The editions that the names of sheets meant in runs recorded before a run held its sheets by content. Never changed:
 * such runs are pinned to these, whatever is on the shelf by then.
 */
export const landedSheets: readonly HardwareSheet[] = [
  wBeamMidspan31,
  wBeamPostSplice27,
  flaredTerminal31,
  flaredTerminal27,
  tangentTerminal31,
  trailingAnchor31,
  trailingAnchor27,
  buriedEnd31,
  bridgeEnd31,
] as unknown as readonly HardwareSheet[]
