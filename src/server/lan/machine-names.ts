import { isIPv6 } from 'node:net'
import { hostname, networkInterfaces } from 'node:os'

/** Under what others on the local network reach this machine. */
export interface MachineNames {
  /** The one to hand out: it stays when the address changes. */
  readonly stable: string
  /** Every name and address that a certificate has to hold, the stable one first. */
  readonly all: readonly string[]
  /** Its addresses on local networks: they may change. */
  readonly addresses: readonly string[]
}

/** Addresses that a certificate of our own authority may hold (RFC 1918, 3927, 4193, 4291, 1122). */
const isPrivate = (address: string): boolean =>
  isIPv6(address)
    ? /^(f[cd]|fe[89ab])|^::1$/i.test(address)
    : /^(10|127|192\.168|169\.254|172\.(1[6-9]|2\d|3[01]))\./.test(address)

/** What this machine is called and its private addresses, as they are now. */
export function machineNames(): MachineNames {
  const bare = hostname()
    .toLowerCase()
    .split('.')[0]!
    .replaceAll(/[^a-z0-9-]/g, '-')
  const stable = `${bare}.local`
  const addresses = Object.values(networkInterfaces())
    .flatMap((each) => each ?? [])
    .filter(({ address, internal }) => !internal && isPrivate(address) && !/^fe80/i.test(address))
    .map(({ address }) => address)
  return { stable, addresses, all: [...new Set([stable, bare, 'localhost', '127.0.0.1', '::1', ...addresses])] }
}
