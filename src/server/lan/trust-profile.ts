import { createHash } from 'node:crypto'

/**
 * A configuration profile with the authority's certificate, as phones of one maker take it: a property list with one
 * payload of type `com.apple.security.root`. The same authority gives the same profile, so a second one replaces the first.
 * @param certificate  DER
 */
export function trustProfile(certificate: Buffer, name: string): string {
  const id = (what: string): string => uuidOf(Buffer.concat([Buffer.from(what), certificate]))
  const title = xml(`Lapwise on ${name}`)
  return `<?xml version="1.0" encoding="UTF-8"?>
<!DOCTYPE plist PUBLIC "-//Apple//DTD PLIST 1.0//EN" "http://www.apple.com/DTDs/PropertyList-1.0.dtd">
<plist version="1.0">
<dict>
<key>PayloadType</key><string>Configuration</string>
<key>PayloadVersion</key><integer>1</integer>
<key>PayloadIdentifier</key><string>lapwise.trust.${id('profile')}</string>
<key>PayloadUUID</key><string>${id('profile')}</string>
<key>PayloadDisplayName</key><string>${title}</string>
<key>PayloadDescription</key><string>Lets this device trust the Lapwise server of its own local network.</string>
<key>PayloadContent</key>
<array>
<dict>
<key>PayloadType</key><string>com.apple.security.root</string>
<key>PayloadVersion</key><integer>1</integer>
<key>PayloadIdentifier</key><string>lapwise.trust.${id('certificate')}</string>
<key>PayloadUUID</key><string>${id('certificate')}</string>
<key>PayloadDisplayName</key><string>${title}</string>
<key>PayloadContent</key>
<data>
${certificate
  .toString('base64')
  .match(/.{1,64}/g)!
  .join('\n')}
</data>
</dict>
</array>
</dict>
</plist>
`
}

/** A UUID from a hash, marked as of version 8 (RFC 9562, 5.8). */
function uuidOf(bytes: Buffer): string {
  const hex = createHash('sha256').update(bytes).digest('hex')
  return [hex.slice(0, 8), hex.slice(8, 12), `8${hex.slice(13, 16)}`, `8${hex.slice(17, 20)}`, hex.slice(20, 32)]
    .join('-')
    .toUpperCase()
}

const xml = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;')
