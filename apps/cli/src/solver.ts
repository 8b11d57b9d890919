import { highsSolver, type MilpSolver } from '@loamwright/science';

/** The solver, loaded when it is first wanted: its WebAssembly takes longer to load than most commands to run. */
export async function loadSolver(): Promise<MilpSolver> {
  const { default: loadHighs } = await import('highs');
  return highsSolver(await loadHighs());
}
