import type { Server } from 'node:https'
import { isIPv6 } from 'node:net'
import type { FastifyInstance } from 'fastify'
import { renderUnicodeCompact } from 'uqr'
import { doorsOf } from '../own-names.ts'
import { fingerprintOf } from './authority.ts'
import { lanFolder, openDeviceList } from './device-list.ts'
import { newEntryCode } from './entry-code.ts'
import { openLanKeys } from './lan-folder.ts'
import type { LetInParts } from './let-in.ts'
import { machineNames } from './machine-names.ts'
import { createTrustServer } from './trust-server.ts'

/** How often the machine's names and the end of its certificate are looked at, milliseconds: our judgement. */
const lookEvery = 60_000

/** What a server on a local network is made of, before it listens. */
export interface LanServer {
  readonly tls: { readonly certificate: string; readonly key: string }
  readonly letIn: LetInParts
  /** Listens for those who do not trust the encrypted address yet, and keeps the certificate good while `app` runs. */
  start(app: FastifyInstance, port: number, trustPort: number): Promise<{ close(): Promise<void> }>
}

/** @param say  prints on the console */
export async function openLanServer(
  dataFolder: string,
  now: () => Date,
  say: (text: string) => void,
): Promise<LanServer> {
  const folder = lanFolder(dataFolder)
  const names = machineNames()
  const keys = await openLanKeys(folder, names, now())
  const code = newEntryCode()
  let port = 0
  const showCode = (): void =>
    say(`Code that lets the next device in: ${code.current()}   (at https://${names.stable}:${port}/let-in)`)
  return {
    tls: keys.server,
    letIn: {
      devices: openDeviceList(folder),
      code,
      now,
      cameIn: (device) => {
        say(`Let in: ${device}`)
        showCode()
      },
    },
    async start(app, ownPort, trustPort) {
      port = ownPort
      const fingerprint = await fingerprintOf(keys.authority)
      const facts = { fingerprint, port, stable: names.stable, isReplaced: keys.isReplaced }
      const trust = createTrustServer(
        keys.authority,
        facts,
        doorsOf('0.0.0.0', null, () => machineNames().all),
      )
      const plain = await trust.listen({ port: trustPort, host: '0.0.0.0' })
      const plainPort = new URL(plain).port
      const address = `http://${names.stable}:${plainPort}/trust`
      say(`Phones begin here, once: ${address}\n${renderUnicodeCompact(address)}`)
      const byAddress = names.addresses.map((one) => `http://${isIPv6(one) ? `[${one}]` : one}:${plainPort}/trust`)
      if (byAddress.length > 0) say(`If a device does not find that name: ${byAddress.join(' or ')}`)
      say(`Fingerprint of the authority (SHA-256): ${fingerprint}`)
      showCode()
      let shown = keys.server.certificate
      const look = setInterval(() => {
        // What cannot be written or read now is tried again: the certificate in use is good for weeks yet.
        renew(app, folder, shown, now()).then(
          (certificate) => {
            shown = certificate
          },
          (cause: unknown) => say(`The certificate could not be looked after: ${String(cause)}`),
        )
      }, lookEvery)
      return {
        close: async () => {
          clearInterval(look)
          await trust.close()
        },
      }
    },
  }
}

/**
 * Another address or an end in sight: the same authority signs a new certificate, and who is connected stays.
 * @param shown  the certificate in use
 * @returns the one in use from now on
 */
async function renew(app: FastifyInstance, folder: string, shown: string, now: Date): Promise<string> {
  const { certificate, key } = (await openLanKeys(folder, machineNames(), now)).server
  if (certificate !== shown) (app.server as unknown as Server).setSecureContext({ cert: certificate, key })
  return certificate
}
