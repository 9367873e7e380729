/** What the mix can be asked: why it is so, what is wished of it, trade-offs, versions, refusals and the change-over. */
import type { Dispatch, SetStateAction } from 'react';
import { type Key, Tab, TabList, TabPanel, Tabs } from 'react-aria-components';
import type { Eater } from '../../../formulation/problem/for-animals.ts';
import type { Mix } from '../../../household/model.ts';
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

const TABS = {
  why: 'Why',
  wishes: 'Wishes',
  trade: 'Trade-offs',
  versions: 'Versions',
  refusals: 'If a food is left',
  sharing: 'Several animals',
  change: 'Change-over',
} as const;

/** The tab that an address names; "why" where it names none. */
export function adviceAt(shown: string | undefined): keyof typeof TABS {
  return shown !== undefined && shown in TABS ? (shown as keyof typeof TABS) : 'why';
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
  return (
    <Tabs className="advice" selectedKey={tab} onSelectionChange={setTab}>
      <TabList className="advice-tabs" aria-label="Ask about this mix">
        {Object.entries(TABS).map(([id, name]) => (
          <Tab key={id} id={id} className="advice-tab">
            {name}
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
