/** Work in chunks on several threads, the answers in the order of the chunks, however fast each of them is. */

/** Something that works on one chunk at a time. */
export interface Hand<Answer> {
  readonly work: (chunk: number) => Promise<Answer>;
}

/** So many chunks may be ahead of the one that is waited for, for each hand: none stands idle, and little is kept. */
const ahead = 4;

/**
 * @param chunks how many there are
 * @param stopped asked before each chunk is given out: no more then
 */
export async function* inOrder<Answer>(
  chunks: number,
  hands: readonly Hand<Answer>[],
  stopped: () => boolean = () => false,
): AsyncGenerator<Answer> {
  const free = [...hands];
  const waiting: (() => void)[] = [];
  const answers: Promise<Answer>[] = [];
  let given = 0;
  const hand = async (): Promise<Hand<Answer>> => {
    for (;;) {
      const next = free.pop();
      if (next !== undefined) return next;
      await new Promise<void>((resolve) => waiting.push(resolve));
    }
  };
  const done = async (chunk: number): Promise<Answer> => {
    const own = await hand();
    try {
      return await own.work(chunk);
    } finally {
      free.push(own);
      waiting.shift()?.();
    }
  };
  const most = ahead * hands.length;
  for (;;) {
    while (given < chunks && answers.length < most && !stopped()) {
      const answer = done(given++);
      // A failure is told where the answer is waited for.
      answer.catch(() => undefined);
      answers.push(answer);
    }
    const first = answers.shift();
    if (first === undefined) return;
    yield await first;
  }
}
