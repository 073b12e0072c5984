import { expect, it } from 'vitest'
import { english } from '../words/english.ts'
import { spanish } from '../words/spanish.ts'
import { titleBlockContents } from './title-block.ts'

it('a title block says what was said of it in its order, and each revision with what it replaces', () => {
  const titleBlock = {
    ...{ approved: 'M. Reyes', agency: 'County of Alder', seal: true },
    revisions: [
      { date: '2016-05-04', what: 'run made longer' },
      { date: '2016-05-12', what: 'as built', replacedDate: '2016-05-04', replacedHash: '719ca09a' },
      { date: '2016-05-13', what: 'post 3', replacedHash: '12ab' },
    ],
  }
  expect(titleBlockContents({ titleBlock, project: 'Resurfacing' }, english('us'))).toEqual({
    cells: [
      { name: 'Agency', value: 'County of Alder' },
      { name: 'Project', value: 'Resurfacing' },
      { name: 'Approved', value: 'M. Reyes' },
    ],
    revisions: [
      'Revision 1, 2016-05-04: run made longer',
      'Revision 2, 2016-05-12: as built; replaces 2016-05-04, 719ca09a',
      'Revision 3, 2016-05-13: post 3; replaces 12ab',
    ],
    seal: 'Seal',
  })
  expect(titleBlockContents({ titleBlock }, spanish('us'))?.revisions[1]).toBe(
    'Revisión 2, 2016-05-12: as built; reemplaza 2016-05-04, 719ca09a',
  )
})

it('a run of which nothing was said has none, whatever its project', () => {
  expect(titleBlockContents({ project: 'Resurfacing' }, english('us'))).toBeNull()
})
