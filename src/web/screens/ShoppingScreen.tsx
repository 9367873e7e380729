/** Shopping: what to buy for the next batch, from whom, and what it costs. */

export function ShoppingScreen() {
  return (
    <main id="main" className="page">
      <h1>Shopping</h1>
    </main>
  );
}
