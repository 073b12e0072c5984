import type { HardwareSheet } from '../core/hardware/hardware-sheet.ts'
import bridgeEnd31 from './bridge-end-31.json' with { type: 'json' }
import buriedEnd31 from './buried-end-31.json' with { type: 'json' }
import flaredTerminal27 from './flared-terminal-27-3-4.json' with { type: 'json' }
import flaredTerminal31 from './flared-terminal-31.json' with { type: 'json' }
import tangentTerminal31 from './tangent-terminal-31.json' with { type: 'json' }
import trailingAnchor27 from './trailing-anchor-27-3-4.json' with { type: 'json' }
import trailingAnchor31 from './trailing-anchor-31.json' with { type: 'json' }
import wBeamMidspan31 from './w-beam-midspan-31.json' with { type: 'json' }
import wBeamPostSplice27 from './w-beam-post-splice-27-3-4.json' with { type: 'json' }

/** The sheets that ship; a test reads every one through the published schema, which is what makes the cast true. */
export const shippedSheets: readonly HardwareSheet[] = [
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
