#!/usr/bin/env node
// Command line and server. In a clone, what is missing or stale is installed and built first.
import { existsSync } from 'node:fs'

const words = process.argv.slice(2)
// Whoever reads may have seen enough and close the pipe early; how it ends is told all the same.
process.stdout.on('error', (cause) => {
  if (cause.code !== 'EPIPE') throw cause
})
try {
  const preparing = new URL('../scripts/prepare.mjs', import.meta.url)
  const wanted = words.includes('serve') ? ['program', 'web'] : ['program']
  if (existsSync(preparing)) (await import(preparing)).prepare(wanted)
  const { main } = await import('../dist/program/command-line.js')
  process.exitCode = await main(words, process, () => import('../dist/program/server.js'))
} catch (cause) {
  // What ends before the command has begun must not look like a verdict, which 1 is.
  process.stderr.write(`Lapwise could not start:\n${cause instanceof Error ? cause.stack : cause}\n`)
  process.exitCode = 3
}
