/** A stream of numbers that is the same for the same seed, on every machine. */
export interface Random {
  /** Evenly from 0 up to, not including, 1. */
  next(): number;
  /** Evenly between two numbers. */
  between(low: number, high: number): number;
  /** A whole number from 0 up to, not including, 2³². */
  bits(): number;
  /** About normal, mean 0 and standard deviation 1. */
  normal(): number;
}

const EVEN = 2 ** 32;
/** Twelve even numbers add up to a variance of one. */
const TERMS = 12;

/** Marsaglia’s xorshift with 32-bit state (Marsaglia G. 2003, Xorshift RNGs, J. Stat. Softw. 8(14)), its output multiplied. */
export function randomFrom(seed: number): Random {
  // A state of 0 would stay 0; the multiplication parts neighbouring seeds.
  let state = (Math.imul(seed | 0, 0x9e3779b1) ^ 0x2545f491) | 1;
  const bits = (): number => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return Math.imul(state, 0x2c1b3c6d) >>> 0;
  };
  const next = (): number => bits() / EVEN;
  return {
    bits,
    next,
    between: (low, high) => low + (high - low) * next(),
    normal: () => Array.from({ length: TERMS }, next).reduce((sum, value) => sum + value, -TERMS / 2),
  };
}
