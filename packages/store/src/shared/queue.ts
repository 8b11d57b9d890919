/** Lets one piece of work at a time through, in the order of asking; a failure doesn't stop the next. */
export type Queue = <Result>(work: () => Promise<Result>) => Promise<Result>;

export function createQueue(): Queue {
  let last: Promise<unknown> = Promise.resolve();
  return (work) => {
    const result = last.then(work);
    last = result.catch(() => undefined);
    return result;
  };
}
