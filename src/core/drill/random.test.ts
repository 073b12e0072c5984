import { expect, test } from 'vitest'
import { randomFrom } from './random.ts'

/**
 * The output of the reference program's demo, `pcg32-demo`, seed 42 and stream 54, rounds 1 and 2: numbers, coins, dice and
 * a shuffled pack of cards, in this order. Published with the generator (pcg-c-basic).
 */
const rounds = [
  {
    numbers: '0xa15c02b7 0x7b47f409 0xba1d3330 0x83d2f293 0xbfa4784b 0xcbed606e',
    coins: 'HHTTTHTHHHTHTTTHHHHHTTTHHHTHTHTHTTHTTTHHHHHHTTTTHHTTTTTHTTTTTTTHT',
    rolls: '3 4 1 1 2 2 3 2 4 3 2 4 3 3 5 2 3 1 3 1 5 1 4 1 5 6 4 6 6 2 6 3 3',
    cards:
      'Qd Ks 6d 3s 3d 4c 3h Td Kc 5c Jh Kd Jd As 4s 4h Ad Th Ac Jc 7s Qs 2s 7h Kh 2d 6c Ah 4d Qh 9h 6s 5s 2c 9c Ts 8d 9s 3c 8c Js 5d 2h 6h 7d 8s 9d 5h 8h Qc 7c Tc',
  },
  {
    numbers: '0x74ab93ad 0x1c1da000 0x494ff896 0x34462f2f 0xd308a3e5 0x0fa83bab',
    coins: 'HHHHHHHHHHTHHHTHTHTHTHTTTTHHTTTHHTHHTHTTHHTTTHHHHHHTHTTHTHTTTTTTT',
    rolls: '5 1 1 3 3 2 4 5 3 2 2 6 4 3 2 4 2 4 3 2 3 6 3 2 3 4 2 4 1 1 5 4 4',
    cards: '7d 2s 7h Td 8s 3c 3d Js 2d Tc 4h Qs 5c 9c Th 2c Jc Qd 9d Qc 7s 3s',
  },
]

test('gives the numbers that the reference program prints, in its order', () => {
  const random = randomFrom(42, 54)
  const times = <T>(n: number, draw: () => T): T[] => Array.from({ length: n }, draw)
  const pack = Array.from({ length: 52 }, (_, i) => 'A23456789TJQK'[Math.floor(i / 4)]! + 'hcds'[i % 4]!)
  for (const { numbers, coins, rolls, cards } of rounds) {
    const hex = (value: number): string => `0x${value.toString(16).padStart(8, '0')}`
    expect(times(6, () => hex(random.next())).join(' ')).toBe(numbers)
    expect(times(65, () => 'TH'[random.below(2)]).join('')).toBe(coins)
    expect(times(33, () => random.below(6) + 1).join(' ')).toBe(rolls)
    expect(random.shuffled(pack).join(' ').startsWith(cards)).toBe(true)
  }
})
