import { type FigureKind, figureKinds, type HardwareSheet, type Shown } from '../../core/hardware/hardware-sheet.ts'
import { withTranslation } from '../../core/hardware/translate-text.ts'
import { languagesBeside } from '../../formats/sheet/text-rows.ts'
import { choiceWords } from '../../words/say-sheet.ts'
import { type Draft, valueAt, withValue } from '../form/draft.ts'
import type { FormField } from '../form/form-field.ts'
import { printIn } from '../messages.ts'
import { sheetFieldMaker } from './sheet-field-maker.ts'
import { words } from './words.ts'

/** What each kind of figure has to be told; those that are not here draw by limits alone. */
const told: Readonly<Partial<Record<FigureKind, readonly (keyof Shown)[]>>> = {
  block: ['present'],
  'rail-bolt': ['present', 'wrongWasher'],
  'slotted-panel': ['present'],
  'splice-position': ['splice'],
  lap: ['over'],
  'slot-set': ['set', 'toward'],
  'head-holes': ['set'],
  'hinge-side': ['toward'],
  'bearing-plate': ['fixing', 'plate'],
  'bracket-opening': ['fixing', 'toward'],
  'post-kind': ['breakaway'],
}

/** The figure of the rule at `at`, and what it draws as right. */
export function figureFields(draft: Draft, at: string): readonly FormField[] {
  const { form } = words()
  const { maker } = sheetFieldMaker(draft)
  const figure = valueAt(draft, `${at}.figure`) as FigureKind | null | undefined
  const chosen = maker.choice(
    `${at}.figure`,
    form.figure,
    Object.fromEntries(figureKinds.map((one) => [one, form.figures[one]])),
    {
      isOptional: true,
      // What one figure draws means nothing to another.
      put: (into, value) =>
        value === figure ? into : withValue(withValue(into, `${at}.figure`, value), `${at}.shows`, undefined),
    },
  )
  return [
    chosen,
    ...(told[figure as FigureKind] ?? []).flatMap((what) => shownFields(draft, at, what)),
    ...pictureFields(draft, at),
  ]
}

/** A picture of the sheet's own, and what it shows in each language. */
function pictureFields(draft: Draft, at: string): readonly FormField[] {
  const { picture } = words().form
  const { maker } = sheetFieldMaker(draft)
  const place = `${at}.picture`
  const asked = maker.field(place, picture.label, { kind: 'own picture', isOptional: true })
  const alt = valueAt(draft, `${place}.alt`)
  if (asked.value === undefined) return [asked]
  const texts = draft as Pick<HardwareSheet, 'language' | 'translations'>
  const others = languagesBeside(texts).map((to) =>
    maker.field(`${place}.alt in ${to}`, picture.altIn(to), {
      kind: 'words',
      value: texts.translations?.[to]?.[String(alt)],
      put: (into, said) => withTranslation(into as Draft & typeof texts, to, String(alt), String(said ?? '')),
    }),
  )
  return [asked, maker.field(`${place}.alt`, picture.alt, { kind: 'words' }), ...(alt === '' ? [] : others)]
}

function shownFields(draft: Draft, at: string, what: keyof Shown): readonly FormField[] {
  const { form } = words()
  const make = sheetFieldMaker(draft)
  const print = printIn(null)
  const place = `${at}.shows.${what}`
  const optional = (field: FormField): FormField => ({
    ...field,
    isOptional: true,
    put: (into, value) => (value === null && field.value === undefined ? into : field.put(into, value ?? undefined)),
  })
  const choice = (choices: Readonly<Record<string, string>>): readonly FormField[] => [
    optional(make.maker.choice(place, form.shows[what], choices)),
  ]
  switch (what) {
    case 'present':
    case 'wrongWasher':
      return [optional(make.yesNo(place, form.shows[what]))]
    case 'set':
      return choice(choicesOf(['upper', 'lower'], (one) => choiceWords('slotSet', one, print)))
    case 'over':
      return choice(choicesOf(['upstream', 'downstream'], (one) => choiceWords('slotSide', one, print)))
    case 'splice':
      return choice(choicesOf(['post', 'midspan'], (one) => choiceWords('position', one, print)))
    case 'breakaway':
      return choice(choicesOf(['hinge', 'other', 'none'], (one) => choiceWords('breakaway', one, print)))
    case 'toward':
      return choice(form.toward)
    case 'fixing':
      return [
        make.maker.check(place, form.shows.fixing, {
          value: valueAt(draft, place) !== undefined,
          put: (into, value) =>
            value === (valueAt(into, place) !== undefined)
              ? into
              : withValue(into, place, value === true ? fixingOf(valueAt(into, `${at}.figure`)) : undefined),
        }),
      ]
    case 'plate':
      return make.optional(place, form.shows.plate, undefined, {}, () => [
        make.inches(`${place}.upInches`, form.plateUp),
        make.inches(`${place}.downInches`, form.plateDown),
      ])
  }
}

const choicesOf = (all: readonly string[], say: (one: string) => string): Readonly<Record<string, string>> =>
  Object.fromEntries(all.map((one) => [one, say(one)]))

const fixingOf = (figure: unknown): Shown['fixing'] => (figure === 'bearing-plate' ? 'retainer' : 'seat')
