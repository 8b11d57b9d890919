export { charBlend } from './char-blend.ts';
export type { CharBlend, CharBlendInput, CharBounds, CharDose } from './char-blend-io.ts';
export { charParameters, charSoils } from './parameters.ts';
