import type { Point } from '../../core/geometry/point.ts'
import { theirs } from '../../core/theirs.ts'
import type { Metres } from '../../core/units/quantity.ts'
import type { ProblemSaying } from '../../words/problems/problem-saying.ts'
import { type InputProblem, written } from '../input-problem.ts'
import { listLimits, type RangeName, ranges } from '../range/ranges.ts'
import { childrenOf, type XmlElement } from './xml-tree.ts'

/** Reads attributes and points and collects what is wrong with them; a value that cannot be read is 0 or null. */
export class Reader {
  readonly problems: InputProblem[] = []
  private readonly file: string
  private readonly points: ReadonlyMap<string, string>

  /** @param points  by name, as they are written: "northing easting" */
  constructor(file: string, points: ReadonlyMap<string, string>) {
    this.file = file
    this.points = points
  }

  fault(element: XmlElement, expected: ProblemSaying, found: NonNullable<InputProblem['found']>): void {
    this.problems.push({ file: this.file, place: element.place, expected, found })
  }

  /** What stands in it; one that is not there or blank is a fault, and ''. */
  attribute(element: XmlElement, name: string): string {
    const value = element.attributes[name]?.trim() ?? ''
    if (value === '') this.fault(element, { kind: 'attribute of', name, element: element.name }, { kind: 'none' })
    return value
  }

  /** A number no larger than the most of its range, either way. */
  number(element: XmlElement, name: string, range: RangeName): number {
    const stated = this.attribute(element, name)
    if (stated === '') return 0
    const value = Number(stated)
    const { most } = ranges[range]
    if (Math.abs(value) <= most) return value
    this.fault(
      element,
      Number.isFinite(value)
        ? { kind: 'attribute at most', name, most }
        : { kind: 'number of attribute', name, element: element.name },
      theirs(stated),
    )
    return 0
  }

  /** Says when a list is longer than its limit. */
  count(element: XmlElement, list: 'alignments' | 'elements' | 'stationEquations', found: number): void {
    const most = listLimits[list]
    if (found > most) this.fault(element, { kind: 'entries at most', most }, written(found))
  }

  /** The point in the child `name` or that it refers to, written "northing easting" and perhaps an elevation. */
  point(element: XmlElement, name: string, long: (value: number) => Metres): Point | null {
    const child = childrenOf(element, name)[0]
    if (child === undefined) {
      this.fault(element, { kind: 'child of', name, element: element.name }, { kind: 'none' })
      return null
    }
    const reference = child.attributes.pntRef
    const text = reference === undefined ? child.text : this.points.get(reference)
    if (text === undefined) {
      this.fault(child, { kind: 'known point' }, { kind: 'reference to point', name: reference! })
      return null
    }
    const numbers = text.trim().split(/\s+/).map(Number)
    const [northing, easting] = numbers
    if (numbers.length < 2 || numbers.length > 3 || !numbers.every(Number.isFinite)) {
      this.fault(child, { kind: 'northing and easting', name }, written(text.trim()))
      return null
    }
    const { most } = ranges.coordinate
    if (numbers.some((one) => Math.abs(one) > most)) {
      this.fault(child, { kind: 'coordinates at most', most }, written(text.trim()))
      return null
    }
    return { easting: long(easting!), northing: long(northing!) }
  }
}
