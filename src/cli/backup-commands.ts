import type { ServerProgram } from '../protocol/server-program.ts'
import { badWords, type Command } from './command.ts'
import { note, print, say } from './io.ts'

const tell = { print, say, note }

/** @param server  loads the server, which this shell does not know */
export const backupCommands = (server: () => Promise<ServerProgram>): readonly Command[] => [
  {
    name: 'backup',
    words: '[FOLDER]',
    summary: 'Copies the store and its photos into a new folder, also while the server runs.',
    options: {},
    notes: [
      'Without FOLDER one with the time in its name, in backups of LAPWISE_DATA. It is told by the same settings as serve.',
      'Keep it on another disk: everything in it can be read by whoever has it.',
    ],
    examples: ['backup', 'backup /mnt/other/lapwise-2026-05-12'],
    load: async () => async (words) => {
      if (words.length > 1) throw badWords('backup or backup FOLDER', words.join(' '))
      return (await server()).backUp(words[0] ?? null, tell)
    },
  },
  {
    name: 'restore',
    words: 'FOLDER',
    summary: 'Puts such a copy into an empty store, in the embedded database or in PostgreSQL, while no server runs.',
    options: {},
    notes: ['Phones read on where they were; what came after the copy they send again, as long as they hold it.'],
    examples: ['restore /mnt/other/lapwise-2026-05-12'],
    load: async () => async (words) => {
      const [from, ...rest] = words
      if (from === undefined || rest.length > 0) throw badWords('restore FOLDER', words.join(' '))
      return (await server()).restore(from, tell)
    },
  },
  {
    name: 'verify',
    words: '[FOLDER]',
    summary: 'Recomputes every hash of such a copy, or of the store while no server holds it, and prints its head.',
    options: { head: 'a head that was printed before: whether the entries that it counts are still those' },
    notes: ['Print the head now and then, or send it elsewhere: it shows later that nothing before it was changed.'],
    examples: ['verify /mnt/other/lapwise-2026-05-12', 'verify'],
    load: async () => async (words, options) => {
      const [from = null, ...rest] = words
      if (rest.length > 0) throw badWords('verify or verify FOLDER', words.join(' '))
      return (await server()).verify(from, options.head, tell)
    },
  },
]
