#!/usr/bin/env node
// The command line. Runs from a clone: packages are installed on first use, TypeScript is run as it stands.
import { prepare } from '../scripts/prepare.mjs'

prepare({ web: false })
const { register } = await import('tsx/esm/api')
register()
const { main } = await import('../src/cli/main.ts')
process.exitCode = await main(process.argv.slice(2))
