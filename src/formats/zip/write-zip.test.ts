import { execFileSync } from 'node:child_process'
import { unzipSync } from 'fflate'
import { describe, expect, it } from 'vitest'
import { writeZip } from './write-zip.ts'

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text)
const files = [
  { name: 'stakes.csv', bytes: bytes('1,0,0\n'.repeat(200)) },
  { name: 'photos/Übersicht ¾.jpg', bytes: Uint8Array.of(0xff, 0xd8, 0xff, 0xe0) },
]

describe('writeZip', () => {
  it('holds every file under one folder, as it was', () => {
    const read = unzipSync(writeZip('Alder-Creek', files))
    expect(Object.keys(read)).toEqual(['Alder-Creek/stakes.csv', 'Alder-Creek/photos/Übersicht ¾.jpg'])
    expect(read['Alder-Creek/photos/Übersicht ¾.jpg']).toEqual(files[1]!.bytes)
    expect(read['Alder-Creek/stakes.csv']).toEqual(files[0]!.bytes)
  })

  it('is the same bytes in every time zone', () => {
    const inZone = (zone: string): string =>
      execFileSync(
        process.execPath,
        [
          '--import',
          'tsx',
          '--eval',
          `import { writeZip } from ${JSON.stringify(new URL('./write-zip.ts', import.meta.url).href)}
           process.stdout.write(Buffer.from(writeZip('a', [{ name: 'b', bytes: Buffer.from('c') }])).toString('hex'))`,
        ],
        { encoding: 'utf8', env: { ...process.env, TZ: zone } },
      )
    expect(inZone('Pacific/Auckland')).toBe(inZone('America/Denver'))
  })
})
