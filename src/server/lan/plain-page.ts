/** The languages of the pages that the server writes itself. */
export type PlainLanguage = 'en' | 'es'

/** The first of the languages that the browser asks for which we have (RFC 9110, 12.5.4; its weights aside). */
export function pickLanguage(accepted: string): PlainLanguage {
  const first = accepted.split(',').map((one) => one.trim().slice(0, 2).toLowerCase())
  return first.find((one): one is PlainLanguage => one === 'en' || one === 'es') ?? 'en'
}

/** Text as it may stand in a page, in an attribute too. */
export const html = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;')

/** A page that loads nothing, in colours of the rest. */
export const pageOf = (language: PlainLanguage, title: string, body: string): string => `<!doctype html>
<html lang="${language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${html(title)}</title>
<link rel="stylesheet" href="/plain.css">
</head>
<body>
<main>
<h1>${html(title)}</h1>
${body}
</main>
</body>
</html>
`

export const plainStyle = `:root { color-scheme: light dark; --ink: #14202b; --paper: #eceae3; --line: #8a8f94; --deep: #123f73; --good: #0b5d3b; --bad: #8f1d14 }
@media (prefers-color-scheme: dark) { :root { --ink: #f0efe9; --paper: #14202b; --deep: #9cc4f2; --good: #7fd6ab; --bad: #ffb0a6 } }
body { margin: 0; background: var(--paper); color: var(--ink); font: 18px/1.5 system-ui, sans-serif }
main { max-width: 40rem; margin: 0 auto; padding: 1rem }
h1 { font-size: 1.6rem; line-height: 1.2 } h2 { font-size: 1.2rem; margin: 2rem 0 .5rem }
label { display: block; margin: 1rem 0 } input { display: block; box-sizing: border-box; width: 100%; min-height: 56px; padding: 0 .75rem; font: inherit; border: 2px solid var(--line); border-radius: 6px; background: transparent; color: inherit }
button, a.do { display: inline-block; min-height: 56px; box-sizing: border-box; padding: .9rem 1.25rem; font: inherit; font-weight: 700; border: 0; border-radius: 6px; background: var(--deep); color: var(--paper); text-decoration: none }
ol { padding: 0; list-style: none; counter-reset: step } ol li { counter-increment: step; display: flex; gap: 1rem; align-items: flex-start; margin: 0 0 1.25rem }
ol li svg { flex: none; width: 72px; height: 72px } ol li div::before { content: counter(step) '. '; font-weight: 700 }
.note { border-left: 6px solid var(--line); padding-left: 1rem } .good { color: var(--good); font-weight: 700 } .bad { color: var(--bad); font-weight: 700 }
code { overflow-wrap: anywhere }
details { border-top: 1px solid var(--line) } summary { min-height: 56px; display: flex; align-items: center; font-weight: 700 }
`
