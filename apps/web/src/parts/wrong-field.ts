/** Takes the reader to the first field whose writing can't be read; false where there is none. Nothing is kept past one. */
export function showWrongField(): boolean {
  const field = document.querySelector<HTMLElement>('main [aria-invalid="true"]');
  field?.focus();
  return field !== null;
}
