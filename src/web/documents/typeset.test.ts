import { expect, test } from 'vitest'
import { typeset } from './typeset.ts'

test.each([
  ['in what it is handed', '#text("so")', { rows: [{ note: 'ok, ½ in' }, { note: 'seen 😀 here' }] }],
  ['in the template', '#text("so 😀")', {}],
])('a character that the fonts lack is an error that names it: %s', async (_, template, data) => {
  await expect(typeset(template, data, new Map())).rejects.toThrow('the fonts lack 😀 (U+1F600)')
})
