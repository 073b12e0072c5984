import type { ServerProgram, ServerWish } from '../protocol/server-program.ts'
import { badWords, type Command } from './command.ts'
import { note, print, say } from './io.ts'

/** @param server  loads the server, which this shell does not know */
export const serveCommand = (server: () => Promise<ServerProgram>): Command => ({
  name: 'serve',
  words: '[devices | shut-out NAME]',
  firstWords: ['devices', 'shut-out'],
  summary: 'Starts the server with the page, for this machine alone or for phones on the local network.',
  options: {
    lan: 'for phones on the local network: encrypted, by an authority of its own, each device let in by a code',
  },
  notes: [
    'devices         lists the devices that were let in',
    'shut-out NAME   ends what lets the devices of that name in, also while the server runs',
  ],
  examples: ['serve', 'serve --lan', 'serve shut-out "lost phone"'],
  load: async () => async (words, options) => (await server()).serve(wishOf(words, options.lan), { print, say, note }),
})

function wishOf(words: readonly string[], isLan: boolean): ServerWish {
  const [first, device, ...rest] = words
  if (first === undefined) return { kind: 'start', isLan }
  if (!isLan && first === 'devices' && device === undefined) return { kind: 'devices' }
  if (!isLan && first === 'shut-out' && device !== undefined && rest.length === 0) return { kind: 'shut out', device }
  throw badWords('serve, serve --lan, serve devices or serve shut-out NAME', words.join(' '))
}
