// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The checks of the gate, one a file; `allChecks` is their table.

#include "gate/check.h"

namespace crownring {

/// NotReleasable for a closing that is no abandoning, for an approval and for a deferral, while the record holds an
/// entry that cannot be read and is not voided: it may be what stands against them.
[[nodiscard]] Findings askUnreadEntries(const Batch& batch);

/// BadProgramme or BadValue for an adoption, as written or as amendments leave it, whose document our reader of
/// programmes does not take, is of another programme, or has another digest: nothing could be said from it any more.
[[nodiscard]] Findings askAdoptions(const Batch& batch);

/// BadValue for the adoption of a text that is none, lacks what its rule wants stated, or has another wording under a
/// revision that is known. NotReleasable for a confirmation of what is not in use, by somebody who may not sign what it
/// is for, and for one that is taken back by such a person. CannotAmend for a correction of either.
[[nodiscard]] Findings askWordings(const Batch& batch);

/// BadValue for a visit that is none, and for a checklist that breaks its schema or holds a character that nobody sees,
/// as written or as amended.
[[nodiscard]] Findings askOpenings(const Batch& batch);

/// NotReleasable for a line that is settled, as written or as amended, and that the checklist of its inspection does
/// not have: it would stand on the paper, and the line that was meant would stand open.
[[nodiscard]] Findings askSettledLines(const Batch& batch);

/// NotReleasable for a word on an inspection that arrives after its closing, and for the void of what its signature
/// covers: of the closing too, of the approval after a list, and of what it accomplished.
[[nodiscard]] Findings askClosedInspections(const Batch& batch);

/// NotReleasable, with every reason, for each closing that the rules refuse, or that says something else than the
/// record composes.
[[nodiscard]] Findings askClosings(const Batch& batch);

/// NotReleasable for a closing that would accomplish an inspection while lines of the checklist in force are neither
/// carried out nor settled as not applicable: of an organisation's own list that it adopted, else of the one that
/// ships.
[[nodiscard]] Findings askChecklists(const Batch& batch);

/// NotReleasable for a release of a visit in which a check flight is put down as done, while no flight of its balloon
/// is logged after the work. It is asked of new signatures; what was signed before stands.
[[nodiscard]] Findings askCheckFlights(const Batch& batch);

/// NotReleasable, with every reason, for each release after incomplete maintenance that the rules refuse, or that says
/// something else than the record composes.
[[nodiscard]] Findings askIncompleteReleases(const Batch& batch);

/// NotReleasable, with every reason, for each approval of a return to service: where no list is pending, while anything
/// on it still stands, by somebody who may not release such a visit, or in other words than the record composes.
[[nodiscard]] Findings askReturns(const Batch& batch);

/// BadQuantity for a reading, as written or as corrected, with an instrument that by its calibration measures something
/// else, not so far, or not on that day; and for a calibration that contradicts itself. Of an instrument that does not
/// say what it measures nothing is asked here.
[[nodiscard]] Findings askInstruments(const Batch& batch);

/// BadValue for a type that is described or bounded for the first time and differs from one that is known in nothing
/// but separators and case, unless somebody stands by it: what is stated for "Kite-90" is not asked of a "Kite 90".
[[nodiscard]] Findings askTypeNames(const Batch& batch);

/// BadValue for an event of one kind of item that is reported of a balloon, and for one that nothing waits for and that
/// is nearly one that is known: it would ground nothing. What is
/// like none is taken, and who posts it is told.
[[nodiscard]] Findings askEvents(const Batch& batch);

/// UnknownReference for a report outside of what is no event of that balloon or item: it would stop no clock that is
/// shown.
[[nodiscard]] Findings askNotifiedEvents(const Batch& batch);

/// BadQuantity for a reading of a quantity that the bench knows, as written or as corrected, in what is no unit of it:
/// nothing could be said from it, and it would pass for one that was never taken.
[[nodiscard]] Findings askReadings(const Batch& batch);

/// NotReleasable for a deferral, as written or as corrected, that is agreed to by somebody who may not; for an
/// amendment by which a defect is put off for longer or for more than was agreed to, where it does not name who agrees
/// now and why, or that person may not.
[[nodiscard]] Findings askDeferrals(const Batch& batch);

/// NotReleasable for what is written down as accomplished by an inspection of the record, unless that is released in
/// the same batch, on the same day, and its lines and readings accomplish it. After a list of discrepancies it stands
/// in the batch of the approval, all of it, on the day of the closing.
/// A clock that is stated with it is the one signed for. NotReleasable, too, for an inspection under a name that
/// accomplished something before.
[[nodiscard]] Findings askAccomplishments(const Batch& batch);

/// BadValue for the adoption, as written or as corrected, of the aircraft rules of a second regime for a registration.
[[nodiscard]] Findings askRegimes(const Batch& batch);

/// NotReleasable for a correction or a void that makes less of a defect which bars flight, by somebody who may not
/// decide that, or without saying who and why.
[[nodiscard]] Findings askGradings(const Batch& batch);

/// NotReleasable, with every reason, for each airworthiness review, extension or recommendation that the rules refuse;
/// for a printed expiry that the rule does not give; for a review that is only stated where they are signed since.
/// CannotAmend for what would change a certificate.
[[nodiscard]] Findings askReviews(const Batch& batch);

/// NotReleasable for a defect under the name of one that is open.
[[nodiscard]] Findings askFindings(const Batch& batch);

/// NotReleasable for a deferral or a clearing, as written or as corrected, on an item on which its defect was not
/// found: it would change nothing there, and say that it did.
[[nodiscard]] Findings askDefectItems(const Batch& batch);

/// NotReleasable for a renaming after which the registration would carry more than one envelope, and for a fitting that
/// makes it so: its flights would count on two balloons; for that of a balloon that is out of service, and for such a
/// state of a former registration: under the new one it would fly.
[[nodiscard]] Findings askRenamings(const Batch& batch);

/// NotReleasable for a fitting by which an item would carry itself, or of one that is kept apart: unserviceable,
/// quarantined or condemned.
[[nodiscard]] Findings askFittings(const Batch& batch);

/// NotReleasable where what is kept apart comes back without a release of its own (ML.A.504, from memory), where what
/// was condemned comes back at all (49 CFR 180.203, read), and where what is kept apart is still fitted; also where
/// it would come back so by a later word that was there before, or by an amendment that takes the keeping apart away.
[[nodiscard]] Findings askItemStates(const Batch& batch);

/// NotReleasable for the filling of a cylinder whose transport test is past or not shown (ADR 4.1.6.10, 49 CFR
/// 180.205(c), from memory), that is out of service, or that was overheated.
[[nodiscard]] Findings askFillings(const Batch& batch);

/// BadValue for what is entered, or named for the first time, under a name that cannot be told from another by eye.
[[nodiscard]] Findings askNewNames(const Batch& batch);

/// NotReleasable for the withdrawal of what is neither a release nor an approved return, by nobody, or taken back.
[[nodiscard]] Findings askRevocations(const Batch& batch);

/// NotReleasable for a clearing, as written or as amended, of a defect that bars flight, in nobody's name or in that of
/// somebody who may release no work that puts it right, under the rules of the balloon. In a visit that has the item
/// anybody says so, since that is signed, but of what its finder called a danger to flight.
[[nodiscard]] Findings askWhoClears(const Batch& batch);

/// NotReleasable for an amendment of a fitting, a removal or a flight after which something that was reported of a
/// balloon falls no longer on an item, by somebody who may not decide that of a defect, or without saying who and why.
/// What came late and was never said otherwise is taken: order of arrival does not matter.
[[nodiscard]] Findings askFallenEvents(const Batch& batch);

/// NotReleasable for an entry of an item, as written or as amended, after which a cylinder that was overheated is
/// condemned no longer (49 CFR 180.203, read), by somebody who may not decide that of a defect, or without saying who
/// and why.
[[nodiscard]] Findings askHeatSaid(const Batch& batch);

/// NotReleasable for a clearing that is dated before all findings of its defect, as written or as corrections of either
/// leave it.
[[nodiscard]] Findings askClearings(const Batch& batch);

/// NotReleasable for a clearing, as written or as corrected, of a defect that a reading found, while no later reading
/// in its place passes by what the type's manual states: a repair or a part in words shows nothing.
[[nodiscard]] Findings askRereadings(const Batch& batch);

/// NotReleasable for a repair, as written or as corrected, for a defect that a reading found, anywhere but in the place
/// of that reading, where it has one: what is said of no panel puts none right.
[[nodiscard]] Findings askRepairs(const Batch& batch);

/// NotReleasable for a test of fabric, as written or as corrected, that is on a list of discrepancies which is pending,
/// where neither a visit of the record nor a signed paper shows that it was carried out: a statement shows nothing.
[[nodiscard]] Findings askListedTests(const Batch& batch);

/// NotReleasable for a correction or a void of an event, a manual's limit, a directive or a list of parts, on which it
/// rests what grounds, by somebody who may not decide that of a defect, or without saying who and why.
[[nodiscard]] Findings askGroundAmendments(const Batch& batch);

/// NotReleasable for a limit, or for what is said of an item's kind and type, as written or as amended, after which a
/// reading that failed fails no longer (`judgedAsTaken`), by somebody who may not decide that of a defect, or without
/// saying who and why: a reading is judged as it was taken, and what it found stays until it is rectified.
[[nodiscard]] Findings askJudgedAnew(const Batch& batch);

/// NotReleasable for a correction or a void after which a reading beyond the manual's limit fails no longer, by
/// somebody who may not decide that of a defect, or without saying who and why; and for one that takes away the reading
/// on which a clearing rests.
[[nodiscard]] Findings askReadingAmendments(const Batch& batch);

/// NotReleasable for who is entitled, signs, agrees, confirms, answers a directive, or has a code or sets one, under a
/// name that cannot be told by eye from one that came into the record before it: whoever reads the paper takes him for
/// the other.
[[nodiscard]] Findings askPersonNames(const Batch& batch);

/// NotReleasable for what is signed in the name of somebody whose code the record keeps, unless it carries a proof by
/// it over this very entry; for a proof by anything else, or where nobody signs. Whoever posts after the code needs it,
/// whatever day stands on the paper: the day is anybody's to write.
[[nodiscard]] Findings askProofs(const Batch& batch);

/// BadValue for a key by which anybody could sign. NotReleasable for a second code of a person that is not proven by
/// the one before it, nor set by another who has a code, proves it and says why. CannotAmend for a correction or a void
/// of one.
[[nodiscard]] Findings askSignatoryCodes(const Batch& batch);

/// BadValue for a directive under the number of another issuer's, or a revision that the record has, and for one that
/// supersedes another issuer's, a mandatory one where it only recommends, or what supersedes it in turn; for an answer
/// that names no revision of it, nobody who answers, or a terminating action that it has none of, or that is dated
/// before the item was made. NotReleasable for an answer that neither a visit nor a paper nor a person who is entitled
/// under the rules of the balloon shows, and where it is said to be not applicable to what the record says it binds. A
/// compliance before the effective day is accepted; that it is not applicable nobody knew before it was issued.
[[nodiscard]] Findings askDirectives(const Batch& batch);

/// CannotAmend for whatever changes an answer that a release was signed over, withdrawn or not. NotReleasable for a
/// change of any other that does not say by whom and why, or that is by another who may not answer so himself.
[[nodiscard]] Findings askAmendedAnswers(const Batch& batch);

/// NotReleasable for an entry of an item, as written or as amended, after which a mandatory directive binds it no
/// longer by what is said of its kind, type and serial number, by somebody who may not decide that of a defect, or
/// without saying who and why.
[[nodiscard]] Findings askLetGo(const Batch& batch);

/// CannotAmend where a correction changes what a signature says, or anything at all of a release that is proven by a
/// code, or does not say by whom and why what a signature covers is corrected.
[[nodiscard]] Findings askSignedWords(const Batch& batch);

}
