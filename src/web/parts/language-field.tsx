import type { Language } from '../language.ts'
import { LanguageOptions } from './language-options.tsx'

interface Props {
  readonly name: string
  readonly language: Language
  readonly choose: (language: Language) => void
}

/** The language that a document is printed in. */
export const LanguageField = ({ name, language, choose }: Props) => (
  <label>
    <span>{name}</span>
    <select value={language} onChange={({ currentTarget }) => choose(currentTarget.value as Language)}>
      <LanguageOptions />
    </select>
  </label>
)
