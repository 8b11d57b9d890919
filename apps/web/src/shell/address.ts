/** Where the reader is: the pieces of the path after `#/`, and what is laid open over it. */
export interface Route {
  readonly path: readonly string[];
  /** Name of the sheet that lies open over the page, if one does. */
  readonly sheet: string | null;
}

/** The address lives after `#`, so that the built folder needs no rules on the host that serves it. */
export function readRoute(hash: string): Route {
  const [path = '', query = ''] = hash.replace(/^#\/?/u, '').split('?');
  return {
    path: path
      .split('/')
      .filter((piece) => piece !== '')
      .map(decoded),
    sheet: new URLSearchParams(query).get('sheet'),
  };
}

/** A name out of an address; one that nobody could have written stays as it stands. */
function decoded(piece: string): string {
  try {
    return decodeURIComponent(piece);
  } catch {
    return piece;
  }
}

export function writeRoute(route: Route): string {
  const path = route.path.map(encodeURIComponent).join('/');
  return route.sheet === null ? `#/${path}` : `#/${path}?sheet=${encodeURIComponent(route.sheet)}`;
}

/** The address of a page: `to('heap', id)`. */
export function to(...path: readonly string[]): string {
  return writeRoute({ path, sheet: null });
}
