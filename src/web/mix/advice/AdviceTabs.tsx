/** What the mix can be asked: why it is so, what is wished of it, more or less of things, versions, refusals and the change-over. */

import type { Dispatch, SetStateAction } from 'react';
import { type Key, Tab, TabList, TabPanel, Tabs } from 'react-aria-components';
import type { Eater } from '../../../formulation/problem/for-animals.ts';
import type { Mix } from '../../../household/model.ts';
import { words } from '../../../words/words.ts';
import type { AdviceProps } from './advice-props.ts';
import { ChangeOverPanel } from './change-over/ChangeOverPanel.tsx';
import { RefusalPanel } from './refusals/RefusalPanel.tsx';
import { SharingPanel } from './sharing/SharingPanel.tsx';
import { TradeOffPanel } from './trade-off/TradeOffPanel.tsx';
import { MixVersions } from './versions/MixVersions.tsx';
import { WhyPanel } from './why/WhyPanel.tsx';
import { WishPanel } from './wishes/WishPanel.tsx';
import './advice.css';

/** The tab that is open, and the way to open another. */
export type OpenAdvice = readonly [Key, Dispatch<SetStateAction<Key>>];

const TABS = ['why', 'wishes', 'trade', 'versions', 'refusals', 'sharing', 'change'] as const;

/** The tab that an address names; "why" where it names none. */
export function adviceAt(shown: string | undefined): (typeof TABS)[number] {
  return TABS.find((tab) => tab === shown) ?? 'why';
}

export function AdviceTabs({
  kept,
  eaters,
  open: [tab, setTab],
  ...props
}: AdviceProps & {
  readonly kept: Mix;
  readonly eaters: readonly Eater[];
  readonly open: OpenAdvice;
}) {
  const t = words().why.tabs;
  return (
    <Tabs className="advice" selectedKey={tab} onSelectionChange={setTab}>
      <TabList className="advice-tabs" aria-label={t.all}>
        {TABS.map((id) => (
          <Tab key={id} id={id} className="advice-tab">
            {t[id]}
          </Tab>
        ))}
      </TabList>
      <TabPanel id="why">
        <WhyPanel {...props} />
      </TabPanel>
      <TabPanel id="wishes">
        <WishPanel {...props} />
      </TabPanel>
      <TabPanel id="trade">
        <TradeOffPanel {...props} />
      </TabPanel>
      {/* Stays in the page, hidden: an open comparison is not lost by a look at another tab. */}
      <TabPanel id="versions" shouldForceMount>
        <MixVersions mix={kept} evaluation={props.view.fault ? undefined : props.view.evaluation} />
      </TabPanel>
      <TabPanel id="refusals">
        <RefusalPanel {...props} />
      </TabPanel>
      <TabPanel id="sharing">
        <SharingPanel {...props} kept={kept} eaters={eaters} />
      </TabPanel>
      <TabPanel id="change">
        <ChangeOverPanel {...props} />
      </TabPanel>
    </Tabs>
  );
}
