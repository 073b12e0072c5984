/** The words of the page that translates a sheet in English. */
export const shelfTextsEn = {
  title: (to: 'en' | 'es'): string => (to === 'es' ? 'Its texts in Spanish' : 'Its texts in English'),
  link: (to: 'en' | 'es'): string => (to === 'es' ? 'Texts in Spanish' : 'Texts in English'),
  languages: { en: 'English', es: 'Spanish' },
  how: 'What has no translation is shown as it stands, and marked. Values in braces, as {31 in}, have to stand in the translation too: they are said in the units of each run.',
  counts: (translated: number, missing: number, changed: number) =>
    `${translated} translated, ${missing} missing, ${changed} changed since they were translated.`,
  states: {
    changed: 'Changed since they were translated',
    missing: 'Not translated',
    translated: 'Translated',
    source: 'Sources',
  },
  changedHow: 'Until somebody translates it anew, such a text is shown as it stands.',
  sourceHow: 'The title of a document stays as it is published. Only what is no document needs words of its own.',
  before: (text: string) => `It said before: “${text}”, translated:`,
  keep: 'That translation still holds',
  save: 'Save as a table (CSV)',
  take: 'Take a translated table',
  taken: (translated: number, changed: readonly number[], gone: readonly number[]) =>
    [
      translated === 1 ? '1 translation taken from the table.' : `${translated} translations taken from the table.`,
      ...(changed.length === 0 ? [] : [`Changed in the sheet meanwhile, to be looked at: rows ${changed.join(', ')}.`]),
      ...(gone.length === 0 ? [] : [`No longer in the sheet: rows ${gone.join(', ')}.`]),
    ].join(' '),
  notTaken: (file: string) => `Nothing was taken from ${file}.`,
}

export type ShelfTextsWords = typeof shelfTextsEn
