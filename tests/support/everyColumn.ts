/** A workbook in which every number of every table counts for something. */
import { contentFromText } from "./tableFromText";

export const everyColumn = () =>
  contentFromText(`
Season
| Setting | Value |
| Season year | 2031 |
| Operating interest rate | 8% |
| Repayment date | 2031-12-01 |
| Interest method | by date |
| Interest months | 7 |
| Labour per hour | 24 |
| Fuel per gallon | 3.5 |
| Drying charge per point | 0.05 |
| Stand response | My stands |
My_stands
| Corn | 20000 | 28000 | 34000 |
| 2031-04-20 | 80 | 95 | 100 |
| 2031-05-10 | 75 | 90 | 94 |
| 2031-06-10 | 50 | 60 | 66 |
Crops
| Crop | Yield unit | Weight per bu | Standard moisture | Expected price | Low price | High price | Per-unit selling cost | Expected harvest moisture | Other income per acre |
| Corn | bu | 56 | 15.5 | 4.4 | 3.8 | 5 | 0.35 | 19 | 12 |
| Soybeans | bu | 60 | 13 | 11 | 9.5 | 12.5 | 0.5 | 15 | 8 |
Fields
| Field | Hybrid or variety | Crop | Acres | Yield goal | Planned planting date | Planted date | Seeds dropped | Target stand | Row width | Tenure | Rent per acre | Land charge per acre | Operator share of crop % | Proven yield | Uniformity loss % | Harvest done | Base gross per acre | Share above base % | Most rent |
| Alder | Early one | Corn | 120 | 200 | 2031-05-01 | 2031-05-05 | 34000 | 32000 | 30 | crop share | | | 55 | 188 | 2 | | | | |
| Birch | | Corn | 80 | 190 | 2031-05-02 | | | | | cash rent | 210 | | | 181 | | | | | |
| Cedar | | Soybeans | 60 | 55 | 2031-05-10 | | | | | owned | | 160 | | 50 | | 2031-10-02 | | | |
| Dale | | Corn | 45 | 192 | 2031-05-03 | | 33000 | | | flexible rent | 150 | | | 178 | | | 600 | 35 | 290 |
Budget
| For | Kind | Amount | Basis | Month | Operator share of cost % | All in |
| Corn | supplies | 14 | per acre | May | 60 | no |
| Alder | hired labour | 9 | per acre | 2031-10-15 | 55 | |
| Soybeans | irrigation | 900 | whole | | | |
| all | land tax | 11 | per acre | | | |
Items
| Item | Kind | Pack name | Pack size | Pack unit | Plan price per pack | Density | Analysis N-P-K | Charged | Operator share of cost % |
| Seed | seed | bag | 80000 | seeds | 280 | | | | 60 |
| Solution | fertilizer | ton | 2000 | lb | 390 | 10.7 | 28-0-0 | | 70 |
| Parts | supplies | | | each | | | | by revenue | |
Purchases
| Date | Item | Quantity | Unit | Unit price | Amount | Freight | Rebate | Paid on |
| 2031-02-01 | Seed | 50 | bags | 270 | | 15 | 120 | 2031-03-01 |
| 2031-03-01 | Solution | 6 | ton | | 2280 | 60 | 30 | |
| 2031-03-12 | Parts | 4 | each | 55 | 220 | 5 | 3 | |
Applications
| Field or Crop | Item | Rate | Rate unit | Acres | Date | Status | Carrier per acre | Tank size |
| Corn | Seed | 34000 | seeds/ac | | 2031-05-05 | plan | | |
| Alder | Seed | 33500 | seeds/ac | 110 | 2031-05-05 | done | | |
| Corn | Solution | 120 | lb N/ac | | 2031-06-01 | plan | | |
| Birch | Solution | 30 | gal/ac | 75 | 2031-06-02 | plan | 40 | 700 |
| Dale | Solution | 25 | gal/ac | 40 | 2031-06-12 | plan | 35 | |
| Cedar | Seed | 140000 | seeds/ac | | 2031-05-10 | done | | |
Operations
| Field or Crop | Operation | Acres | Passes | Rate | Basis | Machine | Hours | Date | Status | Kind |
| Alder | Spraying | 100 | 2 | 9 | per acre | | | 2031-06-01 | plan | custom work |
| Corn | Scouting | | | 40 | per hour | | 25 | 2031-06-10 | plan | hired labour |
| Birch | Tiling | 70 | 2 | 900 | lump sum | | | 2031-04-10 | plan | repairs |
| Corn | Planting | 190 | 1.1 | | | Planter | | 2031-05-05 | plan | |
| Cedar | Combining | 60 | 1 | | | Combine | | 2031-10-01 | done | |
Machines
| Machine | List price | Purchase price | Age | Years kept | Hours a year | Repair class | Remaining value class | Salvage value | Power | Width | Speed | Field efficiency | Fuel per acre | Fuel price | Real interest rate | Taxes, insurance, housing | Labour per hour | Labour | Tank size | Tractor | Tractor list price | Tractor purchase price | Tractor age | Tractor years kept | Tractor hours a year | Tractor repair class | Tractor salvage value |
| Planter | 100000 | 90000 | 2 | 10 | 150 | planter | | 15000 | 180 | 30 | 5 | 65 | | 3.4 | 4 | 1.5 | 26 | hired labour | 600 | Big one | 250000 | 220000 | 1 | 12 | 400 | 4WD tractor | 60000 |
| Combine | 400000 | 380000 | 3 | 9 | 250 | | combine | | 300 | 25 | 4 | 72 | 1.6 | | 4 | 1.2 | | unpaid labour | | | | | | | | | |
Other costs
| Item | Kind | Amount | Basis | Shared over | Cash | Month |
| Premium | crop insurance | 18 | per acre | Corn | yes | October |
| Haul | haul | 0.12 | per unit of yield | Soybeans | yes | 2031-10-20 |
| Planter | machine ownership | 700 | whole farm | Corn | no | 2031-05-20 |
| Office | overhead | 4200 | whole farm | all by revenue | yes | March |
| Living | family living | 30000 | whole farm | all | yes | June |
Loans
| Name | Kind | Balance | Rate | Payment | Payments a year | Next due | For |
| Line | operating | 40000 | 8 | | | | |
| Land note | term | 250000 | 6 | 24000 | 2 | 2031-03-01 | |
| Tractor note | term | 90000 | 7 | 16000 | 1 | 2031-11-01 | Corn |
Insurance
| Crop | Form | Approved yield | Coverage | Projected price | Harvest price | Harvest price option | Price cap |
| Corn | revenue | 185 | 75 | 4.6 | 7.5 | yes | 1.4 |
| Soybeans | yield | 52 | 80 | 11.2 | | no | |
Stand counts
| Field | Date | Row width | Length | Hoop diameter | Plants | Weak plants | Latitude | Longitude | Part | Part acres | Part planted |
| Alder | 2031-05-25 | | 17.42 | | 27 | 2 | 41.501 | -93.501 | | | |
| Alder | 2031-05-25 | 29 | 17.42 | | 28 | 1 | 41.502 | -93.502 | | | |
| Alder | 2031-05-25 | | | 30 | 3 | 1 | | | | | |
| Alder | 2031-05-25 | | | 36 | 5 | | | | knoll | 9 | 2031-05-06 |
Weather
| Date | High | Low | Rain | Place |
| 2030-05-06 | 72 | 55 | | |
| 2030-05-07 | 74 | 56 | | |
| 2031-05-06 | 70 | 54 | 0.4 | |
| 2031-05-07 | 75 | 53 | 0.3 | |
Hybrids
| Hybrid | Crop | Price per bag | Seeds per bag | Trait fee per acre | Heat units to maturity | Days | Check |
| Early one | Corn | 290 | 80000 | 4 | 2600 | 104 | yes |
| Late one | Corn | 310 | 80000 | 6 | | 111 | |
Hybrid trials
| Trial | Year | Hybrid | Yield | Yield is | Moisture | Test weight | Stand | Lodged % | Trial LSD |
| North | 2030 | Early one | 201 | | 18.5 | 56.5 | 31000 | 2 | 9 |
| North | 2030 | Late one | 214 | wet | 21 | 55.5 | 31500 | 3 | 9 |
| South | 2030 | Early one | 188 | dry | 17 | 57 | 30500 | 1.5 | 11 |
| South | 2030 | Late one | 197 | | 19.5 | 56 | 30000 | 4 | 11 |
Past seasons
| Season | Field | Crop | Hybrid or variety | Acres | Yield unit | Yield goal | Yield | Operating cost per acre | Cash cost per acre | Full cost per acre | Cash need per acre | Planned full cost per acre | Price | Net per acre | Operator share of crop % | Planted | Stand | Heat units | Rain | Sites used |
| 2030 | Alder | Corn | Early one | 118 | bu | 195 | 201 | 410 | 560 | 640 | 690 | 625 | 4.2 | -177 | 55 | 2030-05-03 | 31200 | 2710 | 19.5 | 9, 15 |
| 2029 | Alder | Soybeans | | 118 | bu | 55 | 57 | 240 | 390 | 470 | 500 | 465 | 11.2 | -119 | 55 | 2029-05-12 | 118000 | 2800 | 17.2 | 14 |
Weeds
| Field or Crop | Weed | Resistant to | Seen on |
| Alder | Waterhemp | 9 | 2031-05-20 |
Planter checks
| Machine | Row | Part | New | Replace at | Measured | Unit | Finding | Item | Quantity | Hours | Done on |
| Planter | 3 | Opener disc | 15 | 14.5 | 14.55 | in | | Parts | 2 | 0.5 | |
| Planter | 4 | Opener disc | 15 | 14.5 | 14.4 | in | | Parts | 2 | 0.5 | |
Sales
| Crop | Date | Quantity | Unit | Price | Delivery month | Kind |
| Corn | 2031-03-01 | 4000 | bu | 4.5 | November | forward |
| Corn | 2031-04-01 | 50 | t | 180 | December | forward |
| Soybeans | 2031-06-01 | 900 | bu | 11.4 | October | cash |
Harvest
| Field | Date | Weight or bushels | Unit | Gross | Tare | Bushels are | Moisture | Test weight |
| Cedar | 2031-10-01 | 1500 | bu | | | wet | 14.5 | 57.5 |
| Cedar | 2031-10-02 | | lb | 124000 | 28000 | wet | 15 | 58 |
Changes
| Change | Quadrant | Item | Quantity | Unit | Price | Basis | Years kept | Salvage | Field or Crop | Acres | Interest rate | Counted in |
| Wheels | added costs | Closing wheels | 16 | row | 300 | lump sum | 5 | 400 | Corn | 150 | 6.5 | no |
| Wheels | added returns | Yield gain | 2.5 | bu | | per acre | | | | | | |
| Wheels | reduced costs | Labour | 30 | h | 24 | per year | | | | | | |
`);
