/** `text` as XML 1.0 character data or attribute value; characters that XML cannot hold become U+FFFD. */
export const escapeXml = (text: string): string =>
  text
    // In a regular expression with the flag u, this range finds only surrogates without a partner.
    .replace(/[\ud800-\udfff\ufffe\uffff]/gu, '\ufffd')
    // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what must not get through
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f]/g, '\ufffd')
    .replace(/[&<>"]/g, (mark) => `&${names[mark]};`)
    .replace(/[\t\n\r]/g, ' ')

const names: Readonly<Record<string, string>> = { '&': 'amp', '<': 'lt', '>': 'gt', '"': 'quot' }
