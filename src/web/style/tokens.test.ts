import { readdirSync, readFileSync } from 'node:fs'
import { expect, it } from 'vitest'

const web = new URL('../', import.meta.url)
const tokens = readFileSync(new URL('./style/tokens.css', web), 'utf8')
const styles = readdirSync(web, { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.css') && !path.endsWith('tokens.css'))
  .map((path) => [path, readFileSync(new URL(path, web), 'utf8')] as const)

it('names every colour, size of type and shadow in one file alone', () => {
  const found = styles.flatMap(([path, style]) =>
    [
      ...style.matchAll(/#[0-9a-f]{3,8}\b|\brgba?\([^)]*\)|font-size:[^;]*\d(rem|px|em)|box-shadow: 0[^;]*px 0? ?rgb/g),
    ].map(([text]) => `${path}: ${text}`),
  )
  expect(styles.length).toBeGreaterThan(6)
  expect(found).toEqual([])
})

it('has every role that a style asks for', () => {
  const known = new Set([...tokens.matchAll(/(--[\w-]+):/g)].map(([, name]) => name))
  const asked = styles.flatMap(([path, style]) =>
    [...style.matchAll(/var\((--[\w-]+)/g)]
      .filter(([, name]) => !known.has(name))
      .map(([, name]) => `${path}: ${name}`),
  )
  expect(asked).toEqual([])
})

/** What is written in a rule of the tokens: role to value. */
const rule = (selector: string): ReadonlyMap<string, string> => {
  const start = tokens.indexOf(`${selector} {`)
  expect(start).toBeGreaterThanOrEqual(0)
  const body = tokens.slice(start, tokens.indexOf('\n}', start))
  return new Map([...body.matchAll(/(--[\w-]+): ([^;]+);/g)].map(([, name, value]) => [name!, value!]))
}

const root = rule(':root')
const lights = {
  day: (name: string) => root.get(name),
  night: (name: string) => root.get(name),
  sun: (name: string) => rule(':root[data-light="sun"]').get(name) ?? root.get(name),
  road: (name: string) => rule('.page-head,\n.road').get(name) ?? root.get(name),
}

/** The colour of a role in a light, as #rrggbb. */
function colourOf(light: keyof typeof lights, name: string): string {
  const value = lights[light](name) ?? ''
  const [, day, night] = /^light-dark\((#\w+), (#\w+)\)$/.exec(value) ?? []
  if (day !== undefined) return light === 'night' || light === 'road' ? night! : day
  const [, other] = /^var\((--[\w-]+)\)$/.exec(value) ?? []
  if (other !== undefined) return colourOf(light, other)
  expect(value, `${name} by ${light}`).toMatch(/^#[0-9a-f]{6}$/)
  return value
}

/** WCAG 2.2, relative luminance and contrast ratio. */
function contrast(one: string, other: string): number {
  const [light, dark] = [one, other].map(luminance).sort((a, b) => b - a)
  return (light! + 0.05) / (dark! + 0.05)
}

function luminance(colour: string): number {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(colour.slice(at, at + 2), 16) / 255
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4
  })
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!
}

it('computes contrast as WCAG does: black on white is 21, and #767676 on white just over 4.5', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5)
  expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2)
})

const inks = ['--ink', '--soft', '--meets', '--fails', '--too-close', '--unread', '--does-not-apply', '--accent']

for (const light of ['day', 'night', 'sun', 'road'] as const)
  it(`writes with 7:1 and more on paper by ${light}, and with 4.5:1 and more on every wash`, () => {
    for (const ink of inks) {
      for (const ground of ['--paper', '--sheet'])
        expect(contrast(colourOf(light, ink), colourOf(light, ground)), `${ink} on ${ground}`).toBeGreaterThan(7)
      for (const ground of ['--tint', '--mark'])
        expect(contrast(colourOf(light, ink), colourOf(light, ground)), `${ink} on ${ground}`).toBeGreaterThan(4.5)
    }
    if (light === 'road') return
    for (const name of ['meets', 'fails', 'too-close'])
      for (const ink of [`--${name}`, '--ink'])
        expect(contrast(colourOf(light, ink), colourOf(light, `--${name}-wash`)), ink).toBeGreaterThan(4.5)
    expect(contrast(colourOf(light, '--on-accent'), colourOf(light, '--accent'))).toBeGreaterThan(7)
  })
