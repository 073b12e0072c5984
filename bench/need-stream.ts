import { once } from 'node:events'
import { createWriteStream } from 'node:fs'
import { computeNeed } from '../src/operations/compute-need.ts'
import { type RoadKind, randomSite, seeded } from './random-sites.ts'

/**
 * Writes one line of JSON a site: its number and the need of both directions, or why there is none. Holds no more than a
 * block of lines; a slow reader holds it up. Arguments: how many sites, straight or mixed, the file.
 */
const [many = '1000', roads = 'straight', file = '/dev/null'] = process.argv.slice(2)
const kinds: readonly RoadKind[] = roads === 'mixed' ? ['straight', 'curve', 'spiral'] : ['straight']
const random = seeded(1965)
const out = createWriteStream(file)
let block = ''
let peak = 0
for (let i = 0; i < Number(many); i++) {
  const need = computeNeed(randomSite(random, kinds[i % kinds.length]!))
  block += `${JSON.stringify(need.ok ? { site: i, approach: need.value.approach, departure: need.value.departure } : { site: i, refused: need.error })}\n`
  if (block.length < 1 << 16) continue
  if (!out.write(block)) await once(out, 'drain')
  block = ''
  peak = Math.max(peak, process.memoryUsage.rss())
}
out.end(block)
await once(out, 'finish')
process.stdout.write(`${Math.round(Math.max(peak, process.memoryUsage.rss()) / 2 ** 20)}\n`)
