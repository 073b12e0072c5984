#!/usr/bin/env node
// Starts the server from a clone in any state: what is missing is installed and built first.
import { prepare } from '../scripts/prepare.mjs'

prepare({ web: true })
const { register } = await import('tsx/esm/api')
register()
const { main } = await import('../src/server/main.ts')
await main(process.argv.slice(2))
