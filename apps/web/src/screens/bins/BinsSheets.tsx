import type { ReactNode } from 'react';
import { useBook } from '../../keep/useBook.ts';
import { putAmount, takeOut, useBins } from '../../mix/draft.ts';
import { ownAtBins } from '../../mix/own-name.ts';
import { AmountSheet } from './AmountSheet.tsx';
import { BaySheet } from './BaySheet.tsx';
import { Picker } from './Picker.tsx';

/** What is laid over the bins: a material to be found, an amount to be said, the bay to be measured. */
export default function BinsSheets({ sheet }: { readonly sheet: string }): ReactNode {
  const { items } = useBins();
  const { holding } = useBook().leaf;
  if (sheet === 'add') return <Picker path={['bins']} here={items.map(({ material }) => material)} />;
  if (sheet === 'bay') return <BaySheet />;
  const [, material] = /^amount:(.+)$/u.exec(sheet) ?? [];
  if (material === undefined) return null;
  const own = ownAtBins(holding, material);
  return (
    <AmountSheet
      key={material}
      material={material}
      name={own?.name}
      before={items.find((item) => item.material === material)?.amount}
      onPut={(amount) => putAmount(material, amount, own)}
      onTakeOut={() => takeOut(material)}
    />
  );
}
