import { expect, test } from 'vitest'
import { english } from '../../words/english.ts'
import { problemInWords } from '../input-problem.ts'
import { decodeXml } from './decode-xml.ts'

const road = (encoding: string) => `<?xml version="1.0" encoding="${encoding}"?><a name="Straße Überführung"/>`

const latin1 = (text: string) => Uint8Array.from(text, (letter) => letter.charCodeAt(0))

const twoBytes = (text: string, isLittle: boolean) =>
  Uint8Array.from([...text].flatMap((letter) => (isLittle ? [letter.charCodeAt(0), 0] : [0, letter.charCodeAt(0)])))

test.each([
  ['UTF-8', new TextEncoder().encode(road('UTF-8'))],
  ['UTF-8 with a mark', new TextEncoder().encode(`\uFEFF${road('UTF-8')}`)],
  ['ISO-8859-1', latin1(road('ISO-8859-1'))],
  ['UTF-16 with a mark, little end first', Uint8Array.from([0xff, 0xfe, ...twoBytes(road('UTF-16'), true)])],
  ['UTF-16 with a mark, big end first', Uint8Array.from([0xfe, 0xff, ...twoBytes(road('UTF-16'), false)])],
  ['UTF-16 without a mark', twoBytes(road('UTF-16'), true)],
])('a file in %s keeps its names', (_, bytes) => {
  const text = decodeXml('road.xml', bytes)
  expect(text.ok && text.value).toContain('Straße Überführung')
  expect(text.ok && text.value.startsWith('<?xml')).toBe(true)
})

test('an encoding that nobody knows, and bytes that are not of the one named, are refused', () => {
  const wrong = (bytes: Uint8Array) => {
    const text = decodeXml('road.xml', bytes)
    return text.ok ? null : problemInWords(text.error[0]!, english(null))
  }
  expect(wrong(latin1(road('no-such')))).toMatchObject({
    expected: expect.stringContaining('encoding'),
    found: 'no-such',
  })
  expect(wrong(Uint8Array.from([0xff, 0xfe, 0x00, 0xd8]))).toMatchObject({ found: 'utf-16le' })
})

test('a text that is no XML is UTF-8', () => {
  expect(decodeXml('site.json', new TextEncoder().encode('{"name":"Straße"}'))).toEqual({
    ok: true,
    value: '{"name":"Straße"}',
  })
})
