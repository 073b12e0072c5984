#!/usr/bin/env node
// The command line. Runs from a clone: packages are installed on first use, TypeScript is run as it stands.
import { prepare } from '../scripts/prepare.mjs'

prepare({ web: false })
const { register } = await import('tsx/esm/api')
register()
const { main } = await import('../src/cli/main.ts')
// Whoever reads may have seen enough and close the pipe early.
process.stdout.on('error', (cause) => {
  if (cause.code === 'EPIPE') process.exit(0)
  throw cause
})
process.exitCode = await main(process.argv.slice(2))
