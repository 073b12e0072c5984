import { languages } from '../language.ts'

/** The languages to choose from, each by its own name. */
export const LanguageOptions = () => (
  <>
    {Object.entries(languages).map(([id, name]) => (
      <option key={id} value={id} lang={id}>
        {name}
      </option>
    ))}
  </>
)
