// Draws the expected pictures of test/cases/drawing anew, those named in the command or all: look at each one that
// changed before it is kept. A picture within the tolerance of the one that is kept is left alone.
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { writeSvg } from '../src/drawing/svg/write-svg.ts'
import { pictureDifference, readPng, renderSvg, writePng } from '../test/cases/drawing/picture-pixels.ts'
import { pictures } from '../test/cases/drawing/pictures.ts'

const named = process.argv.slice(2)
for (const name of named) if (!(name in pictures)) throw new RangeError(`there is no picture “${name}”`)

for (const name of named.length > 0 ? named : Object.keys(pictures)) {
  const folder = new URL(`../test/cases/drawing/${name}/`, import.meta.url)
  const file = new URL('expected.png', folder)
  const drawn = renderSvg(writeSvg(pictures[name]!()))
  if (existsSync(file) && pictureDifference(readPng(readFileSync(file)), drawn) === null) continue
  mkdirSync(folder, { recursive: true })
  writeFileSync(file, writePng(drawn))
  console.log(`drew ${name}`)
}
