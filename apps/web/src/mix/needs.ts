import { createDraws, type Needs } from '@loamwright/science';

/** What a calculation on the page needs from outside: the named draws. The solver lives beside the page. */
export const needs: Needs = { draws: createDraws() };
