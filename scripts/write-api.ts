// Writes docs/core-api.txt: what `lapwise/core` offers, and every type that is reached from it, so that a change is seen.
import { writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { coreApi } from './core-api.ts'

writeFileSync(fileURLToPath(new URL('../docs/core-api.txt', import.meta.url)), coreApi())
