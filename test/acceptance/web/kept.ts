import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { expect, type Page, test } from '@playwright/test'
import { PNG } from 'pngjs'

const fontFile = (weight: string): string =>
  readFileSync(fileURLToPath(import.meta.resolve(`@expo-google-fonts/arimo/${weight}/Arimo_${weight}.ttf`))).toString(
    'base64',
  )

/** In one font whatever the machine has, and with nothing whose height is only estimated until it is in sight. */
export const inOneFont = '* { font-family: Kept !important; content-visibility: visible !important }'

/**
 * Without what is another each time: what a worker did by its own clock, how much room is left, a hash over ids; and
 * without the scene, of which pictures are kept by themselves.
 */
const hidden =
  'canvas, .device-state, .device ul:not(.plain), .device .hint, .hash code { visibility: hidden !important }'

/** Has the font of the kept pictures at hand on every page, and a time that stands still. */
export async function readyToKeep(page: Page): Promise<void> {
  await page.clock.setFixedTime('2026-06-02T12:00:00Z')
  const faces = { 400: fontFile('400Regular'), 700: fontFile('700Bold') }
  await page.addInitScript((faces) => {
    for (const [weight, base64] of Object.entries(faces)) {
      const face = new FontFace(
        'Kept',
        Uint8Array.from(atob(base64), (one) => one.charCodeAt(0)),
        { weight },
      )
      document.fonts.add(face)
      void face.load()
    }
  }, faces)
}

/** What the page shows now looks as it is kept under this name; the page is as it was afterwards. */
export async function expectAsKept(page: Page, name: string): Promise<void> {
  // What is recorded has come to rest.
  if (['all', 'changed'].includes(test.info().config.updateSnapshots))
    await expect(async () => expect((await pictureOf(page)).equals(await pictureOf(page))).toBe(true)).toPass()
  // What another browser draws a shade otherwise is no other look.
  await expect(async () =>
    expect(halved(await pictureOf(page))).toMatchSnapshot(['screens', `${name}.png`], {
      threshold: 0.3,
      maxDiffPixels: 40,
    }),
  ).toPass({ timeout: 15_000 })
}

const pictureOf = (page: Page): Promise<Buffer> =>
  page.screenshot({ style: inOneFont + hidden, animations: 'disabled', caret: 'hide' })

/** Half as wide and high, each pixel the mean of four: a fifth of the bytes, in which a word that moved is still seen. */
function halved(picture: Buffer): Buffer {
  const { width, height, data } = PNG.sync.read(picture)
  const half = new PNG({ width: width >> 1, height: height >> 1 })
  for (let y = 0; y < half.height; y++)
    for (let x = 0; x < half.width; x++)
      for (let channel = 0; channel < 4; channel++) {
        const at = (y * 2 * width + x * 2) * 4 + channel
        const below = at + width * 4
        half.data[(y * half.width + x) * 4 + channel] =
          (data[at]! + data[at + 4]! + data[below]! + data[below + 4]!) / 4
      }
  return PNG.sync.write(half, { colorType: 2, deflateLevel: 9 })
}
