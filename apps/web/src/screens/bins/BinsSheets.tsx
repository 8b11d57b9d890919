import type { ReactNode } from 'react';
import { putAmount, takeOut, useBins } from '../../mix/draft.ts';
import { AmountSheet } from './AmountSheet.tsx';
import { BaySheet } from './BaySheet.tsx';
import { Picker } from './Picker.tsx';

/** What is laid over the bins: a material to be found, an amount to be said, the bay to be measured. */
export default function BinsSheets({ sheet }: { readonly sheet: string }): ReactNode {
  const { items } = useBins();
  if (sheet === 'add') return <Picker path={['bins']} here={items.map(({ material }) => material)} />;
  if (sheet === 'bay') return <BaySheet />;
  const [, material] = /^amount:(.+)$/u.exec(sheet) ?? [];
  if (material === undefined) return null;
  return (
    <AmountSheet
      key={material}
      material={material}
      before={items.find((item) => item.material === material)?.amount}
      onPut={(amount) => putAmount(material, amount)}
      onTakeOut={() => takeOut(material)}
    />
  );
}
