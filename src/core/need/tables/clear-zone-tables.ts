import type { ClearZoneBlock, ClearZoneTable } from './table.ts'

// Rows by volume: below 750, 750 to 1,500, 1,500 to 6,000, above 6,000 vehicles a day.
// The column foreslope 1V:3H is not kept: on it the table's distance does not apply directly.

const above40: readonly ClearZoneBlock[] = [
  {
    speed: 50,
    rows: [
      [
        [10, 12],
        [12, 14],
        [8, 10],
        [8, 10],
        [10, 12],
      ],
      [
        [14, 16],
        [16, 20],
        [10, 12],
        [12, 14],
        [14, 16],
      ],
      [
        [16, 18],
        [20, 26],
        [12, 14],
        [14, 16],
        [16, 18],
      ],
      [
        [20, 22],
        [24, 28],
        [14, 16],
        [18, 20],
        [20, 22],
      ],
    ],
  },
  {
    speed: 55,
    rows: [
      [
        [12, 14],
        [14, 18],
        [8, 10],
        [10, 12],
        [10, 12],
      ],
      [
        [16, 18],
        [20, 24],
        [10, 12],
        [14, 16],
        [16, 18],
      ],
      [
        [20, 22],
        [24, 30],
        [14, 16],
        [16, 18],
        [20, 22],
      ],
      [
        [22, 24],
        [26, 32, '*'],
        [16, 18],
        [20, 22],
        [22, 24],
      ],
    ],
  },
  {
    speed: 60,
    rows: [
      [
        [16, 18],
        [20, 24],
        [10, 12],
        [12, 14],
        [14, 16],
      ],
      [
        [20, 24],
        [26, 32, '*'],
        [12, 14],
        [16, 18],
        [20, 22],
      ],
      [
        [26, 30],
        [32, 40, '*'],
        [14, 18],
        [18, 22],
        [24, 26],
      ],
      [
        [30, 32, '*'],
        [36, 44, '*'],
        [20, 22],
        [24, 26],
        [26, 28],
      ],
    ],
  },
  {
    speed: 70,
    rows: [
      [
        [18, 20],
        [20, 26],
        [10, 12],
        [14, 16],
        [14, 16],
      ],
      [
        [24, 26],
        [28, 36, '*'],
        [12, 16],
        [18, 20],
        [20, 22],
      ],
      [
        [28, 32, '*'],
        [34, 42, '*'],
        [16, 20],
        [22, 24],
        [26, 28],
      ],
      [
        [30, 34, '*'],
        [38, 46, '*'],
        [22, 24],
        [26, 30],
        [28, 30],
      ],
    ],
  },
]

/** The same in the editions up to 2006 and, corrected by its errata, in that of 2011. */
const upTo40: ClearZoneBlock = {
  speed: 40,
  rows: [
    [
      [7, 10],
      [7, 10],
      [7, 10],
      [7, 10],
      [7, 10],
    ],
    [
      [10, 12],
      [12, 14],
      [10, 12],
      [10, 12],
      [10, 12],
    ],
    [
      [12, 14],
      [14, 16],
      [12, 14],
      [12, 14],
      [12, 14],
    ],
    [
      [14, 16],
      [16, 18],
      [14, 16],
      [14, 16],
      [14, 16],
    ],
  ],
}

const remark = { kind: 'first printing differs' } as const

/** @source AASHTO, Errata to Roadside Design Guide, 4th Edition: page 3-3, backslope columns; example 3-D, 30 to 34 ft */
const errata = 'AASHTO Errata to Roadside Design Guide, 4th Edition (read in a copy)'
const everyRow = [0, 1, 2, 3]

/** ft, mi/h */
export const clearZone2011Us: ClearZoneTable = {
  source: 'RDG 2011 Table 3-1 (US customary)',
  confirmation: 'from memory',
  remark,
  limit: 30,
  blocks: [
    {
      ...upTo40,
      published: {
        cells: everyRow.flatMap((row) => [2, 3, 4].map((column) => [row, column] as const)),
        source: `${errata}, page 3-3`,
      },
    },
    ...above40.map((block) =>
      block.speed === 70
        ? { ...block, published: { cells: [[3, 0]] as const, source: `${errata}, example 3-D` } }
        : block,
    ),
  ],
}

/** ft, mi/h */
export const clearZone2006Us: ClearZoneTable = {
  source: 'RDG 2002/2006 Table 3.1 (US customary)',
  confirmation: 'from memory',
  remark,
  limit: 30,
  blocks: [upTo40, ...above40],
}

/** m, km/h */
export const clearZoneMetric: ClearZoneTable = {
  source: 'RDG 2002/2006 Table 3.1 (metric)',
  confirmation: 'from memory',
  remark: { kind: 'clear zones of both editions' },
  limit: 9,
  blocks: [
    {
      speed: 60,
      rows: [
        [
          [2, 3],
          [2, 3],
          [2, 3],
          [2, 3],
          [2, 3],
        ],
        [
          [3, 3.5],
          [3.5, 4.5],
          [3, 3.5],
          [3, 3.5],
          [3, 3.5],
        ],
        [
          [3.5, 4.5],
          [4.5, 5],
          [3.5, 4.5],
          [3.5, 4.5],
          [3.5, 4.5],
        ],
        [
          [4.5, 5],
          [5, 5.5],
          [4.5, 5],
          [4.5, 5],
          [4.5, 5],
        ],
      ],
    },
    {
      speed: 80,
      rows: [
        [
          [3, 3.5],
          [3.5, 4.5],
          [2.5, 3],
          [2.5, 3],
          [3, 3.5],
        ],
        [
          [4.5, 5],
          [5, 6],
          [3, 3.5],
          [3.5, 4.5],
          [4.5, 5],
        ],
        [
          [5, 5.5],
          [6, 8],
          [3.5, 4.5],
          [4.5, 5],
          [5, 5.5],
        ],
        [
          [6, 6.5],
          [7.5, 8.5],
          [4.5, 5],
          [5.5, 6],
          [6, 6.5],
        ],
      ],
    },
    {
      speed: 90,
      rows: [
        [
          [3.5, 4.5],
          [4.5, 5.5],
          [2.5, 3],
          [3, 3.5],
          [3, 3.5],
        ],
        [
          [5, 5.5],
          [6, 7.5],
          [3, 3.5],
          [4.5, 5],
          [5, 5.5],
        ],
        [
          [6, 6.5],
          [7.5, 9],
          [4.5, 5],
          [5, 5.5],
          [6, 6.5],
        ],
        [
          [6.5, 7.5],
          [8, 10, '*'],
          [5, 5.5],
          [6, 6.5],
          [6.5, 7.5],
        ],
      ],
    },
    {
      speed: 100,
      rows: [
        [
          [5, 5.5],
          [6, 7.5],
          [3, 3.5],
          [3.5, 4.5],
          [4.5, 5],
        ],
        [
          [6, 7.5],
          [8, 10, '*'],
          [3.5, 4.5],
          [5, 5.5],
          [6, 6.5],
        ],
        [
          [8, 9],
          [10, 12, '*'],
          [4.5, 5.5],
          [5.5, 6.5],
          [7.5, 8],
        ],
        [
          [9, 10, '*'],
          [11, 13.5, '*'],
          [6, 6.5],
          [7.5, 8],
          [8, 8.5],
        ],
      ],
    },
    {
      speed: 110,
      published: { cells: [[3, 0]], source: `${errata}, example 3-D` },
      rows: [
        [
          [5.5, 6],
          [6, 8],
          [3, 3.5],
          [4.5, 5],
          [4.5, 5],
        ],
        [
          [7.5, 8],
          [8.5, 11, '*'],
          [3.5, 5],
          [5.5, 6],
          [6, 6.5],
        ],
        [
          [8.5, 10, '*'],
          [10.5, 13, '*'],
          [5, 6],
          [6.5, 7.5],
          [8, 8.5],
        ],
        [
          [9, 10.5, '*'],
          [11.5, 14, '*'],
          [6.5, 7.5],
          [8, 9],
          [8.5, 9],
        ],
      ],
    },
  ],
}
