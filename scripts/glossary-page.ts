import { glossaryEn } from '../src/web/messages/glossary-en.ts'

/** The words of the trade as a page of docs/, in the order of the alphabet. */
export function glossaryPage(): string {
  const terms = Object.values(glossaryEn.terms).toSorted(([a], [b]) => a.localeCompare(b, 'en'))
  const lines = terms.map(([name, means]) => `- **${name}**: ${means}`)
  return `# Glossary\n\nThe words of the trade as Lapwise uses them. The page shows them with figures at \`/glossary\`, in each of its languages.\n\n${lines.join('\n')}\n`
}
