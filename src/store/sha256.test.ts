import { describe, expect, it } from 'vitest'
import { sha256 } from './sha256.ts'

describe('sha256', () => {
  // FIPS 180-2, appendix B.1: SHA-256 of "abc".
  it('is SHA-256, of a text and of its bytes', () => {
    const digest = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'
    expect(sha256('abc')).toBe(digest)
    expect(sha256(new TextEncoder().encode('abc'))).toBe(digest)
  })
})
