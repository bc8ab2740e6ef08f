<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>ErrorText</name>
    <message>
        <source>The program made a mistake of its own. What was saved is safe. Close this page, open it again, and tell whoever looks after the program: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The program was given a name it can&apos;t find anything by. Nothing was changed. Go back to Learners and choose the person again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This file is broken at byte %1. Nothing of it was used and your records are as they were. Ask for a fresh copy of the file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One entry does not fit its place (%1 %2). Nothing was saved from it. Correct it and press again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file %1 could not be read: %2. Nothing was changed. Check that it is there and that you may open it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file %1 could not be written: %2. The record itself is safe. Choose another place and save again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This program does not know what %1 means. Nothing was changed. A newer version of the program may.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A text holds signs that can&apos;t be kept: %1. Nothing was saved. Type it again instead of pasting it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A number is too large or has a fraction: %1. Nothing was saved. Write a smaller whole number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was to be saved is nested too deep, more than %1 levels. Nothing was changed. Tell whoever looks after the program.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One saved entry is not as this program writes them: %1 %2. Nothing was changed. Keep the file as it is and tell whoever looks after the program.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One saved entry has been changed from outside. Nothing was written over it. Keep the file as it is and tell whoever looks after the program.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One saved entry is sealed in a way this version can&apos;t open: %1. It is safe where it is. Use the version of the program that wrote it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same thing was said twice at once (%1). Nothing was saved from it. Press once more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entries of the kind %1, version %2, are too old to be shown. They are safe where they are. Use the version of the program that wrote them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A visit is open already. It is saved as it stands. Go on with it or stop it, then start this one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no open visit for this. Nothing was recorded. Start a visit first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This visit has ended and is saved. Nothing was added to it. Write an addendum for what is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The visit is paused. Nothing was recorded. Press P to go on, then mark it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The visit is not paused. Nothing was changed. Go on as you are.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Some steps are still open. All that was recorded is saved. Finish them, or stop the visit with its reason.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A clock is still running. It was not disturbed. Press Space when the learner has finished that part.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This clock is not the one that comes now. Nothing was started. Follow the step in the middle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This clock is not running. Nothing was recorded. Press Space when the learner begins.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The timed part of this step has not been done. The step was not marked. Start its clock with Space, or mark the step as not done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pack has no such step. Nothing was recorded. Go back to the step in the middle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another step comes now. Nothing was recorded. Mark the step in the middle first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something this step needs is not in place yet. The step was not marked. See the lanes below for what is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This step has not been done in this visit. Nothing was recorded. Choose a step with a mark.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This step can&apos;t be left out. Nothing was changed. Mark it as seen, or as not done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no step to mark now. All that was recorded is saved. Finish the visit, or stop it if no way back is left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rest of this part holds critical or timed steps. Nothing was marked. Mark them one by one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pack does not list this lapse. Nothing was recorded. Choose Other and say what was touched.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no lapse this could be about. Nothing was recorded. Mark the lapse first with L.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How this lapse was caught is already noted. Nothing was changed. Take it back first if it was wrong.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This can&apos;t be taken back. What was recorded stays. Write a note, or an addendum after the visit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You have taken over already. Nothing was changed. Go on with the step in the middle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This person teaches the visit already. Nothing was changed. Choose another teacher.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pack does not measure this. Nothing was saved. Choose one of the measures shown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no figure yet. Nothing was saved. Write millimetres, or the number of marks in view.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This figure can&apos;t be right. Nothing was saved. Measure again and write it in millimetres.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This visit is not done on the patient, so no dressing was changed. Nothing was saved. Note it in the visit on the patient.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pack&apos;s calendar does not know this dressing. Nothing was saved. Choose one of the dressings shown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no record at %1. Nothing was made there. Check the folder, or begin a new record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A folder lies where the record should be: %1. It was left as it is. Move it, or choose another place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file %1 is not a record of this program. It was left as it is. Choose another file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A newer program wrote this record (version %1; this one reads up to %2). It is safe and was left as it is. Use the newer program.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The program is already open with this record. Nothing was changed. Use the window that is open, or close it first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another program holds the record&apos;s file. What was saved is safe; this last step was not saved. Close the other program and do the step again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record&apos;s file is cut short or damaged (%1). It was left as it is. Do not write over it: tell whoever looks after the computer, who can put a backup in its place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entry %1 of the record is not as it was written. Nothing is shown that can&apos;t be trusted. Tell whoever looks after the computer, and keep the file as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The end of the record does not fit what is in it. The entries were left as they are. Tell whoever looks after the computer; &quot;ninebark record rebuild&quot; can often mend it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This record can be read but not written. Nothing of this step was saved. Write it on paper, and ask for the right to write.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The disk is full. What was saved before is safe; this last step was not saved. Make room and do the step again, or write it on paper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The disk did not take this step (%1). What was saved before is safe. Do the step again; when it fails once more, write it on paper and tell whoever looks after the computer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This record is of the other kind: invented people and patients are never kept together. Nothing was changed. Open it the other way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record could not be brought to the new form (%1). It is as it was, and a copy lies beside it. Use the older program and tell whoever looks after the computer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An older program wrote this record and it can only be read here. Nothing was changed. Open it once where it can be written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A stored file is not what it was when it was kept (%1). It is not used. Load the pack again, or tell whoever looks after the computer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A text is too long or holds broken signs. Nothing was saved. Write it shorter, or type it instead of pasting it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A line that is needed is still empty. Nothing was saved. Fill it in and press again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no name yet. Nothing was saved. Write the name as it is written on papers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are no initials yet. Nothing was saved. Write them as they stand on a label.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A number is still empty. Nothing was saved. Write it and press again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is not one clear day. Nothing was saved. Write the month as a word, for instance 3 May 1961.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This day lies in the future. Nothing was saved. Check the day, the month and the year.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A late entry is about something that has passed. Nothing was saved. Give the day and time when it happened.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This person is on the staff list already. Nothing was changed. Choose them from the list.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is chosen who works here. Nothing was saved. Press Who works here and choose your name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who only reads can&apos;t write. Nothing was saved. Choose somebody who teaches under Who works here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This patient is in the record already. Nothing was added. Go to Learners and search for the name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No patient is open. Nothing was saved. Go to Learners and choose one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This line is not in the record. Nothing was saved. Choose a line, or add it first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This learner is in the record already. Nothing was added. Choose them on the patient&apos;s page.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This learner is not in the record. Nothing was saved. Choose one on the patient&apos;s page.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no consent to teach this person. No visit was begun. Ask the patient, and tick it under Consent.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fewer than two identifiers are ticked. No visit was begun. Ask the patient for name and date of birth.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arm, line and kit are not yet checked with the patient. No visit was begun. Look together, then tick it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody else teaches this visit. Nothing was recorded. Let them hand over to you, or choose their name under Who works here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The teaching pack is not at hand. What was recorded with it is safe. Ask whoever looks after the program for this pack.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not made for this kind of line. Nothing was changed. Choose a pack that is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not made for what holds this line. Nothing was changed. Choose a pack or a kit that agree.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not made for this dressing. Nothing was changed. Choose a pack or a dressing that agree.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not made for this antiseptic. Nothing was changed. Choose a pack or an antiseptic that agree.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not made for this kind of learner. Nothing was changed. Choose a pack for a caregiver, or for the patient, as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not made for a patient of this age. Nothing was changed. Choose a pack that is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It uses something this patient reacts to. Nothing was begun. Choose a pack without it, and ask the clinician in charge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pack does not ask this. Nothing was saved. Choose one of the questions shown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pack has no such drill. Nothing was saved. Choose one of those shown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This was asked in %1 rounds. All answers are saved. Write another plan for it first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was asked before. Nothing was saved yet. Write how it was said differently this time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No competency waits for a signature. Nothing was signed. See below what is still missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record holds something this version does not know. It is safe, and nothing was signed over it. Sign with the newer version of the program.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody else saw one of these. Nothing was signed. Let them sign it; their name stands beside it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One of these is not met yet. Nothing was signed. See below what is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rules say not yet, or a signature is missing. No certificate was made. Use Going home with help.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This file is no pack: %3 It was not used, and your records are as they were. Ask for a fresh copy (byte %2).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This file is larger than packs may be: %3 It was not used, and your records are as they were. Ask for a smaller one (byte %2).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This pack was written for a newer version: %3 It was not used. Use a newer version of the program (%1).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The way back from this could not be worked out, with more than %1 states. What was recorded is safe. Stop the visit and start with new supplies.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pack does not have this: %1 %2. Nothing was changed. Choose from what is shown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was noticed before it happened (%1, %2). Nothing was recorded. Choose an earlier step.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is not enough memory to check a passphrase. Nothing was changed. Close other programs and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A stored key is not as this program writes it (%1). It was left as it is. Tell whoever looks after the computer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The name or the passphrase is not right. Nothing was opened. Type both again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This does not open: %1. It was changed, or it belongs to another key. It was left as it is. Tell whoever looks after the computer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The key for this is not at hand. What was saved is safe. Sign in first, or ask someone who may read it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A signature does not hold (%1). It is not counted. Tell whoever looks after the computer, and keep the record as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This signature can&apos;t be kept: it is too large, or it was not drawn here. Nothing was signed. Clear it and draw it again, or type the name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Several passphrases were wrong one after the other. Nothing was opened. Wait %1 seconds, then type the name and the passphrase again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This record has its first person already. Nothing was changed. Ask an educator to let you in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This passphrase would be guessed. Nothing was changed. Take a longer one, several words that do not belong together for instance.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody signs in by this name already. Nothing was changed. Write the name in another way, with a second first name for instance.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is signed in any more. What was saved is safe. Sign in and do it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only an educator may do this. Nothing was changed. Ask one of them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody does this for themselves. Nothing was changed. Ask another educator.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This person has left and signs in no more. Nothing was changed. What they wrote stays. Choose somebody else.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who may sign in is changed on the People page alone, with a passphrase. Nothing was changed. Go there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The passphrases of this record are guessed too quickly, as those of a demonstration. It was not opened. No real person may be in it. Tell whoever looks after the computer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The stored keys are not those the record tells of (%1). Somebody changed the files. It was not opened. Keep it as it is and tell whoever looks after the computer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody else is signed in at this computer. Nothing was saved. Sign in yourself and do it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is signed yet. Type your passphrase once for all that is listed, then sign.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The program writes this by itself when it happens. Nothing was saved. Do what it is about instead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No passphrase was given. Nothing was opened. Type it and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This record has no keys that a backup could be sealed to. Nothing was written. Make the first person of a record of patients first; a record of invented people can be copied as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not a backup of this program. It was left as it is. Choose another file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The backup has form %1, and this program knows forms up to %2. It was left as it is. Use the newer program.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The backup ends too early. Nothing was restored. Copy it again from where it came, or take another one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The backup is not as it was written. Nothing was restored. Copy it again from where it came, or take another one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 holds another record. Nothing was restored and nothing was changed there. Restore into a folder of its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record there is newer than the backup: it has %1 entries, the backup has %2. Nothing was restored and nothing was changed there. Restore into a folder of its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An educator and an auditor erase a record together, each with their own passphrase. Nothing was erased. Ask the other one to come.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The reason stays when the record is gone, and it has a name or number of the record in it. Nothing was erased. Say why without naming anybody.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A visit of this patient is open. Nothing was erased. End the visit first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This record was erased by two people. Nobody can read it any more, and nothing can be added to it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record holds a piece of %1 bytes, and a backup takes none above %2. No backup was made. Keep a copy of the whole folder instead, and tell whoever looks after this computer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record was destroyed here. Older copies lie beside it, and what they hold can still be read: %1. Have them destroyed too, by whoever looks after this computer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record was destroyed, and its key still lies in the journal, because another program was reading. Close every other one. The key goes with the next thing that is saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One of these is signed already, and nothing was shown since. Nothing was signed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One of these was handed over in its middle, so nobody saw all of it. Nothing was signed. Watch it once more from its beginning to its end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not written down yet who does the next change and whom to call. No paper was made. Fill in Going home with help first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record was destroyed here. Its key still lies in the journal, because another program was reading: close every other one. Older copies lie beside the record and can still be read: %1. Have them destroyed too, by whoever looks after this computer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You have no part in this record. It stays closed, and nothing was written down. Say why you open it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This pack breaks a rule of packs: %3 It was not used, and your records are as they were. Send it back to whoever wrote it, with this: %1, byte %2. %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This record is not sealed: nobody has keys to it, and it is read without a name. Nothing was changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verifying was stopped before its end. Nothing can be said of the record; nothing was changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is no visit, signature or late entry of this chart. Nothing was marked. Choose one from the list.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This visit is still open. Nothing was marked. Stop the visit first, then mark it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is marked already. Nothing was written. Where the mark is a mistake, write an addendum to it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody else wrote this. Nothing was marked. Ask them, or an educator, to mark it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This step is there for its measure, and there is none yet. The step is not passed. Write the figure down, or why it could not be measured.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 letters and figures were typed, and %2 are printed. Nothing was changed. Compare them with the paper, line by line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the line numbered %1 stands a sign that is never printed there. Nothing was changed. Compare that line with the paper, letter by letter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The line numbered %1 was not typed as it is printed. Nothing was changed. Compare that line with the paper, letter by letter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A line that is alike in every respect is in the record and in use. Nothing was saved. If it is the same line, go back; if it is another, say what is different.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is different from what the record says. Nothing was saved. Change what was wrong, or go back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record says that this line was removed. Nothing was changed. Choose a line that is in use.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record does not say that this line was removed. Nothing was changed. Go on as you are.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A visit with this line is open, and it is saved as it stands. The line was not marked as removed. Finish or stop the visit first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 marks in view, %2 mm apart, reach over more than %3 mm: one of the two is wrong. Nothing was saved. Measure and count again. If the marks of this line stand closer together, leave them empty: later counts would mislead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By the record the line was put in, changed or used in a visit after that day. Nothing was saved. Correct the day here, or what is wrong at the line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By the record the line was used in a visit, or removed, before it was put in on that day. Nothing was saved. Correct the day here, or what is wrong at the line. A visit that was not theirs is marked as written in the wrong chart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record at %1 is damaged. Nothing was restored and nothing was changed there. Restore into another folder, and keep the damaged file: it may hold what the backup does not.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A record of patients takes the time from this computer alone. Nothing was opened. Leave out the other clock.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tables of the record&apos;s file, or the rules that guard them, are not those this program makes. Nothing was written. Keep the file as it is and tell whoever looks after the computer, who can verify it and restore a backup to another folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The reason is kept when the record is gone, and it has a name or number of the record in it. It stays closed, and nothing was written down. Say why without naming anybody.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Findings</name>
    <message>
        <source>No critical step has been seen in a return demonstration yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Critical steps without a cue or a lapse: %1 of %2. With so few, the true share may lie anywhere from %3 to %4. The figure informs; the nurse decides.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Keys</name>
    <message>
        <source>the next thing seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cue given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>take one cue back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hands-on help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done, not seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>does not apply</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lapse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>caught it alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>show the way back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rest of this part seen clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>take the last mark back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>take over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hand over to a colleague</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stop the visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pause, go on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>write a note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>write down a measure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>turn the screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tone on or off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>everything that has a key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lock the keys for wiping</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>several lapses at one moment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>something else went wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it happened earlier, or was left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no helper at hand, or one again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read aloud to the learner</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LabelWords</name>
    <message>
        <source>%1, born %2, number %3: the patient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2), for %3, born %4, number %5</source>
        <comment>who is taught, for whom</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Lanes</name>
    <message>
        <source>held from %1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lost at %1 until %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>won back from %1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured %1 at %2, shorter than asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured %1 at %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lapse %1 at %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, from %2 to %3</source>
        <comment>what held</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open from %1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open: %1, from %2 to %3</source>
        <comment>what held</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not seen, taken to hold from %1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, not seen but taken to hold, from %2 to %3</source>
        <comment>what held</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LapseWords</name>
    <message>
        <source>left out: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Emergency</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The team, day and night</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The team, today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>number not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>whom to call, with the number: why</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>something else</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LineWords</name>
    <message>
        <source>not written down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind of line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inserted on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length outside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marks in view</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Round the arm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lumens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dressing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What holds the line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Skin antiseptic</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dressing last changed on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2, inserted %3</source>
        <comment>kind of line, arm, date</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 mm outside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; </source>
        <comment>between items</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record says that the patient reacts to this: %1. It is, or may be, in: %2. Read the packaging, follow your unit&apos;s policy, and ask whoever prescribes before it is used again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record says that the patient reacts to this: %1. It is not known whether this kit contains it. Look at the label of each thing in it, follow your unit&apos;s policy, and ask whoever prescribes before it is used again.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PaperTitle</name>
    <message>
        <source>Chart record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Going home with help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chart note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steps for home</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Papers</name>
    <message>
        <source>No visit yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lapses seen: %1, caught and put right alone: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Teach-back: %1 of %2 questions with every essential point heard. Drills recorded: %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dressing change on the patient: none recorded.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dressing changed %1; next due %2. Site: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ready by the rules; every competency is signed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ready by the rules; not every competency is signed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Invented people, not a chart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Teach-back: %1. Patient %2, record number %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Learner: %1, %2. Taught in %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Going home with help: next change by %1, %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>asked, none known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; </source>
        <comment>between items</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inserted %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outside length at insertion %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>arm girth %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the patient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a name and a relationship</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>may be taught</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>may not be taught</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>may be told about the patient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>may not be told about the patient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2. Given by: %3. Asked by %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>asked, none found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>qualified</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not qualified</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Patient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, born %2, record number %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Learner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Allergies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Consent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taught in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Interpreter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Needs and barriers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fears, in own words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who else is at home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every rule of the pack &quot;%1&quot; is met. The nurse decides and signs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Some rules of the pack &quot;%1&quot; are not met. The reasons, and what is missing, stand below.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Met</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %</source>
        <comment>percent</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Evidence</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no baseline to compare with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no point heard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>
In own words: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>
Said differently before: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to do if</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How it went</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Teach-back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Question</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not asked yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Still to be heard: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another plan: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not asked yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The dressing change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, taught by %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Initials on the label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dressing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How it was borne</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; at once when damp, loose, lifted or soiled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signatures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing has been signed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, signed as what was seen. %2 (%3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Late entry. Happened: %1. Written: %2 (%3), by %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1
Reason for being late: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note by %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not known to this program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes, addenda and late entries</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pack, sources, ledger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2), version %3%4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; taught from a translation that is still a draft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Digest of the pack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ledger</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n entries</source>
        <translation>
            <numerusform>%n entry</numerusform>
            <numerusform>%n entries</numerusform>
        </translation>
    </message>
    <message>
        <source>Root of the ledger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Teach-back record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>still open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stopped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>site covered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>site not covered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line not held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>checked with the patient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not checked with the patient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a clock in view, as at home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pack is not at hand: no steps shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>watching: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visit %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>signed off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>met, not signed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a competency and its state</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1–%2</source>
        <comment>step numbers</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was taught</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Help, step by step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Timed phase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Times measured against times asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lapses and the way back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Way back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caught</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left out: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (the visit was left)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> Touched: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>
Seen at: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>
Noticed late, happened after: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>
%1, by %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (not done to its end)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None was recorded.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>record number %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>born %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a name and a second identifier</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Invented people, not a chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Simulated clock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not recorded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 (%3)</source>
        <comment>who, when, offset</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the kit for home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not the kit for home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Local policy and the judgement of the licensed clinician come first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Local policy (%1) and the judgement of the licensed clinician come first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why not yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 s</source>
        <comment>seconds, short</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ambulance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Care team, day and night</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Care team, the same day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Teacher: name, role, date and time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Learner: name, date and time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What ends it early</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An infection of the line, or a fever that nobody has explained.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The line has moved, was changed, or another kind of line is in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A new kit: another dressing, securement or antiseptic than named here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A long gap without a dressing change, or a change in sight or hands.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The care team says so.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has shown what is asked for: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Competencies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On whom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With which kit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Valid until</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Going home with help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who does what</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next change, when</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next change, by whom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whom to call</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who decided</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who was told</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written down by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is still to be learned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every rule is met; the sign-off is still missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steps in two languages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This translation is a draft: no qualified translator has signed it off yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a date and a time of day</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Consent to teach this learner was given.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Needs and barriers were asked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Allergies were asked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every critical step was seen unprompted in the last demonstration.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every essential point was heard in the learner&apos;s own words.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every drill that is asked was done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seen with the kit that will be used at home.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing in the record is open or unknown to this program.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no consent to teach this learner.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Needs and barriers have not been asked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Allergies have not been asked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not seen unprompted in the last demonstration: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Essential points are still to be heard: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drills still to be done: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not yet seen with the kit that will be used at home.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A visit is open, or the record holds something that this program does not know.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask the patient, or whoever decides for the patient.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask about sight, hands, reading, language and fears.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask before supplies are chosen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Watch one on the patient.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Watch one on another day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Teach this step again and watch it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Teach these steps again and watch them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say it differently, then ask again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Watch one with the home kit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Watch a new return demonstration.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close the visit, or read the record with a newer program.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Guided</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Return demonstration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the patient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on a practice arm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>talked through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing recorded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unprompted</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n cues</source>
        <translation>
            <numerusform>%n cue</numerusform>
            <numerusform>%n cues</numerusform>
        </translation>
    </message>
    <message>
        <source>hands-on help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>does not apply</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done by the teacher</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not caught by the learner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>caught and put right alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the way back was shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>put right and went on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>finish the change, then call today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stop and call now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the patient was unwell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the teacher was called away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it was refused</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by video</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left arm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right arm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>teacher</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>educator</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>auditor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with a cue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>signed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>declined to sign</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>was not permitted to sign</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>was not able to sign</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>published</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>local policy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from memory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>DANGER</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>WARNING</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CAUTION</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NOTICE</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>field</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>skin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cover</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>number not entered, write it here: ____________</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>signed off, more was recorded since</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, lapse %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>visit %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>visits %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Help, step by step: every competency %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Competency; steps not unprompted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 (%3)</source>
        <comment>who, day, offset</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>day, time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1–%2</source>
        <comment>times</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Round %1, %2: </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sources, %1: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heard by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all %1 competencies above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, least %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, on a way back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>why, and a note</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2–%3</source>
        <comment>day, begin, end</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, from %2</source>
        <comment>day, begin</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; %2</source>
        <comment>the kit, and whether it was checked</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visit %1, %2, %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When, and who taught</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unprompted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Times kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lapses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kit: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In every visit: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lanes: what held, and when</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Return demonstrations observed: %1; at least %2 asked for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of these on the patient: %1; at least %2 asked for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On different days: %1; at least %2 asked for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last in a row with every critical step unprompted: %1; at least %2 asked for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go through each: what to do, and whom to call.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Addendum to an entry that is not in this record. Written by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The learner&apos;s acknowledgement, %1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same in letters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; marked by the teacher&apos;s judgement, the plan did not cover it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This computer has no font for some letters of this paper: %1. An empty box stands for each of them. Write them in by hand, or print the paper where the font is installed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recovery sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep it locked away from the computer it belongs to.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These four lines open a sealed record when nobody&apos;s passphrase is left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How it is used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How it is kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In an envelope that is closed and signed across, in a safe or with the pharmacy, as local policy says.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Never beside the computer, never photographed, never in an e-mail.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whoever has this sheet and the computer reads every record in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without this sheet and without a passphrase nobody ever reads them again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Help, step by step: no competency is met yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Addendum to what was recorded on %1 by %2. Written by %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Learner: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is still learning: %2. Until this is signed off, a trained person does the change.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%1 (and %n more)</source>
        <comment>after some items</comment>
        <translation>
            <numerusform>%1 (and %n more)</numerusform>
            <numerusform>%1 (and %n more)</numerusform>
        </translation>
    </message>
    <message>
        <source>%1.</source>
        <comment>a list that ends a sentence</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days since the last demonstration: %1; it counts for %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>acknowledged aloud</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Watch a return demonstration.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not asked whether one is needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not said whether the site is covered and the line held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stopped: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; %2</source>
        <comment>why, and what is safe</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stopped after %1 of %2 steps: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visits: %1. Last: %2, %3, taught by %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, </source>
        <comment>between items</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, which has passed</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Signed by %1: %n competencies.</source>
        <translation>
            <numerusform>Signed by %1: %n competency.</numerusform>
            <numerusform>Signed by %1: %n competencies.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n marks in view</source>
        <translation>
            <numerusform>%n mark in view</numerusform>
            <numerusform>%n marks in view</numerusform>
        </translation>
    </message>
    <message>
        <source>as local policy says</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steps for home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The kit for home is not asked for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A demonstration counts for as long as local policy says.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No demonstration is too old: there is none yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No whole return demonstration yet in which the critical steps could be seen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask these back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>consent to teach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>needs and barriers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>allergies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>return demonstrations %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the patient %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>different days %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in a row unprompted %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>critical steps, still %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>questions, still %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drills, still %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the home kit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last demonstration %1 days ago, counts for %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an open visit or an unknown entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not yet ready. Still open: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>needed, none recorded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Critical steps without cue or lapse: %1 of %2 seen in return demonstrations; 95 % interval %3 to %4 (Wilson). Few demonstrations in one place say little about a change at home, alone, weeks from now. Figures inform; the nurse signs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pack has no words in %1. Go through this with a qualified interpreter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Simulated clock.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not seen: %1</source>
        <comment>what a lane says holds</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Return demonstrations observed: %1; none is asked for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of these on the patient: %1; none is asked for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On different days: %1; no number is asked for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last in a row with every critical step unprompted: %1; no number is asked for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 was signed off: %2. Not everything that is asked for holds now: until it does, a trained person does the change.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is signed off: %2. What was decided here stands until the team decides otherwise.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a lapse, or cut short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>
To call: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>whom to call, why</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>day, whom to call</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To call, by the pack, after what was seen on %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dressing due</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n seconds</source>
        <translation>
            <numerusform>%n second</numerusform>
            <numerusform>%n seconds</numerusform>
        </translation>
    </message>
    <message>
        <source>at least %1</source>
        <comment>so many seconds</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what is timed, and how long</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>then %1</source>
        <comment>a time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the emergency number, at once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the team, at once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the team, the same day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>step numbers, and what was recorded of them</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No step was recorded.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steps %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a timed phase, as measured</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Times: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 (%3)</source>
        <comment>letter, what was seen, who caught it</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dressing changed: %1; site: %2; how it was borne: %3; next due %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visit of %1, taught by %2: %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note by %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signed off: %1. Signed by %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason for being late: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written in the wrong chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written in the wrong chart by mistake, marked by %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is struck out was not about these people. It counts for nothing in this record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n marks</source>
        <translation>
            <numerusform>%n mark</numerusform>
            <numerusform>%n marks</numerusform>
        </translation>
    </message>
    <message>
        <source>. At the limit of %1: do not use the line until told; call the same day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>. At the limit of %1: call the same day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as at insertion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2 than at insertion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>a comparison, and with what</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>could not be measured (%1)</source>
        <comment>why</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2; %3.</source>
        <comment>as found or as left, the figures, the change</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 Read by %2.</source>
        <comment>what was read, and by whom</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <comment>as found or as left</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, then </source>
        <comment>between teachers</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>when it is due, and from what it is reckoned</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reckoned from the change of %1, told with the line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reckoned from the change of %1 by %2, in none of these visits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, in visit %2</source>
        <comment>by whom, and in which visit</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2, %3</source>
        <comment>as found or as left, the figures, the change</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>as found or as left</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a measure, and what was read</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, changed by %2</source>
        <comment>a dressing</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Site: %1</source>
        <comment>what it looked like</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How it was borne: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>. </source>
        <comment>between sentences</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was found and done in other visits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No change on the patient is recorded with this learner.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, from step %2 on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 min</source>
        <comment>minutes, short</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2 s</source>
        <comment>minutes, and seconds besides</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 went on with it at %2, by their own word</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Handed over at %1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from %1 on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>paused %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>paused %1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>paused %1 (%2 in all)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the program was not running %1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the program had ended; on again at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the visit was left, or the machine slept, %1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the visit was left, or the machine slept, until %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taught by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 took the steps over at %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what happened, and why</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counted: steps done unprompted and without a lapse; every other step is named. What did not apply is left out. A dash: nothing was recorded, which never means well done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>found on the patient: no lapse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nobody’s lapse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 Found on the patient, no lapses: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dressing changed %1, told with the line; next due %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dressing changed %1 by %2, not in a visit of this learner; next due %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. Corrected by %2. %3</source>
        <comment>a line, who and when, why</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line removed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How it went, by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>what, at what time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signed off: %1. The ledger had %2 entries then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, did not count; begun again:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, did not count</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>broken off after %1; begun again:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>broken off after %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>broken off; begun again:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>broken off</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n steps did not apply: %1</source>
        <translation>
            <numerusform>%n step did not apply: %1</numerusform>
            <numerusform>%n steps did not apply: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Visits not drawn, since no lapse cut them and no time was short: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Solid: something protected, named where there is room. Outline: it stood open. Broken outline: taken to hold, nobody saw the step. Cross and broken line: cut by a lapse. Hatched: won back. Brackets: timed phases; a filled triangle marks one that was stopped short or broken off. Letters: lapses, below.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. The next change is planned for later: ask the care team</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>when, offset</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opens the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start the program, choose “Open with the recovery sheet”, and compare the name of the record there with the one above. Then type the four lines. Capital and small letters are the same, dashes may be left out. Where a line is mistyped, the program says which.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no letter O, I, L or U in the four lines: what is round is a zero, what is upright a one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When the envelope was opened, have a new sheet made, and destroy this one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, never less than %2</source>
        <comment>how long, and the least</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, never more than %2</source>
        <comment>how long, and the most</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. Keep on until: %2</source>
        <comment>how long, and what is to be seen</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You are not signed off yet. Until you are, a trained person does the change.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You were signed off, but not everything that is asked for holds now. Until it does, a trained person does the change.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; %2, no lapse</source>
        <comment>what was seen, and its letter below</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>found on the patient: no lapse; had to be shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was seen: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>a measure, as found or as left, figures</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no name written down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Interpreter: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> Interpreter: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>
Told late, found at: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pack %1, version %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The code of the ledger is put in when the note is copied.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not issued: it gets its code when it leaves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>given when the paper is issued</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Ledger of %n entries, code %1</source>
        <translation>
            <numerusform>Ledger of %n entry, code %1</numerusform>
            <numerusform>Ledger of %n entries, code %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Ledger: %n entries, code %1</source>
        <translation>
            <numerusform>Ledger: %n entry, code %1</numerusform>
            <numerusform>Ledger: %n entries, code %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Printed %1 (%2). Ninebark %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a name and a role</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Parts</name>
    <message>
        <source>Invented people, not a chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Simulated clock</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ReasonText</name>
    <message>
        <source>I take over the teaching</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I care for the patient today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I check the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is an emergency</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>VisitWords</name>
    <message>
        <source>nothing recorded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unprompted</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n cues</source>
        <translation>
            <numerusform>%n cue</numerusform>
            <numerusform>%n cues</numerusform>
        </translation>
    </message>
    <message>
        <source>with a cue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hands-on help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>does not apply</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done by the teacher</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n seconds</source>
        <translation>
            <numerusform>%n second</numerusform>
            <numerusform>%n seconds</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>about %n minutes</source>
        <translation>
            <numerusform>about %n minute</numerusform>
            <numerusform>about %n minutes</numerusform>
        </translation>
    </message>
    <message>
        <source>done, not seen</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WhyNothing</name>
    <message>
        <source>No step is in hand now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You have taken over: help is no longer counted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A step of the way back can&apos;t be left out: take over, or stop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This step applies always.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In a return demonstration the learner sees nothing that can be read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No step is done yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No way back in this pack needs a helper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You have taken over: noticing is no longer looked at.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This pack measures nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A step of the way back always applies.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WrongCharts</name>
    <message>
        <source>%1: %2, %3, taught: %4</source>
        <comment>a visit, its way, on whom, who was taught</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>an entry, and what it says</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>struck out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visit of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signature of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Late entry about %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written in the wrong chart by mistake, marked by %1 on %2 (%3): %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unknown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written in the wrong chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is struck out stays readable and counts for nothing here.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::AccountPage</name>
    <message>
        <source>Passphrase until now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who may sign in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lock now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sign out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your keys stay, and so does all that you signed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2), %3</source>
        <comment>name, initials, role</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>✓  Changed. From now on only the new one opens.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verify, and who looked</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::AdmitPage</name>
    <message>
        <source>Teaches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Teaches, looks after packs, lets others in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reads and verifies, records nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They sign in by it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Initials, as they stand on a label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let somebody in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They will read everything that is recorded here, from its beginning. The record says who let them in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who is it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What they do here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Now let them sit down here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The passphrase is typed by the new person, while nobody looks. Nobody else ever needs it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let them in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 can sign in now.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::AllergiesField</name>
    <message>
        <source>Asked, none known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reacts to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What happened then: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the patient&apos;s own words.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tick what the patient reacts to, or that none is known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Either none is known, or tick what it is: not both.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Also known: %1. It stays, unless none is known is ticked.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::AllergiesForm</name>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the allergies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Allergies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is answered here counts from now on. What was answered before stays in the record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The allergies are saved. What was answered before stays in the record.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::AskBackPage</name>
    <message>
        <source>Ask back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heard in the learner&apos;s own words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How was it said differently this time?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The learner&apos;s words, if you write them down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The other plan for this question</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep what was heard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next question</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a learner first. Here the learner says it back in their own words, question by question.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No pack with questions fits this learner yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>said back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not asked yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not all heard yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to do when…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Said differently: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Said back</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n rounds, and not all was heard. It needs another plan: another day, another person, another way of showing it.</source>
        <translation>
            <numerusform>%n round, and not all was heard. It needs another plan: another day, another person, another way of showing it.</numerusform>
            <numerusform>%n rounds, and not all was heard. It needs another plan: another day, another person, another way of showing it.</numerusform>
        </translation>
    </message>
    <message>
        <source>Round %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say what has happened. The learner says or shows what to do, then whom to call.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unprompted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With a cue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the plan in a few words first; what was heard is kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (not essential)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 – heard before</source>
        <comment>a point, in an earlier round</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the learners</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::AuditPage</name>
    <message>
        <source>Holds every entry against all others and against what is known from outside. What nobody outside ever knew of can be cut off unseen: keep papers and backups.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verify now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who looked at and printed what</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was looked at yet. Every sign-in, every record that is opened and every paper that is made will stand here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Did what</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of whom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not verified since this page was opened.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verifying…</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>And %n more.</source>
        <translation>
            <numerusform>And %n more.</numerusform>
            <numerusform>And %n more.</numerusform>
        </translation>
    </message>
    <message>
        <source>Looked at:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Head: %1 entries, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entry %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entries %1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not readable as an entry.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>written for another place or another record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there a second time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a signature does not hold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what is shown was not made from it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a drawing or pack it names is not the one of then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not those that a paper, backup or colleague knew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>were known once and are gone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>erased on purpose, by two people; not counted as wrong.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>entry 7: what is wrong with it</comment>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n things are wrong</source>
        <translation>
            <numerusform>%n thing is wrong</numerusform>
            <numerusform>%n things are wrong</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing is wrong, as far as can be seen without every key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n entries, each hash and each place</source>
        <translation>
            <numerusform>%n entry, each hash and each place</numerusform>
            <numerusform>%n entries, each hash and each place</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n signatures</source>
        <translation>
            <numerusform>%n signature</numerusform>
            <numerusform>%n signatures</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sealed bodies opened</source>
        <translation>
            <numerusform>%n sealed body opened</numerusform>
            <numerusform>%n sealed bodies opened</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n drawings and packs</source>
        <translation>
            <numerusform>%n drawing or pack</numerusform>
            <numerusform>%n drawings and packs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n heads known from papers, backups and colleagues</source>
        <translation>
            <numerusform>%n head known from papers, backups and colleagues</numerusform>
            <numerusform>%n heads known from papers, backups and colleagues</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sealed bodies stayed closed: no key for them is here</source>
        <translation>
            <numerusform>%n sealed body stayed closed: no key for it is here</numerusform>
            <numerusform>%n sealed bodies stayed closed: no key for them is here</numerusform>
        </translation>
    </message>
    <message>
        <source>signed in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opened the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>took it along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>verified</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is the record whole?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>signed out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>searched</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>printed a paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>saved a paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>counted lower than the one before it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open to everybody, in a sealed record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not signed, though what it says always is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>changes who can open the record, by nobody who may.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its key is gone, and nothing says that two people erased it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>erased by two people, and its key is there again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not found where it is looked for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not the end of the record that was written down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>told in two ways by what papers, backups and colleagues knew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>changed since it was sealed, or its key was.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>known from a paper or backup of another record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n sealed bodies are erased</source>
        <translation>
            <numerusform>%n sealed body is erased</numerusform>
            <numerusform>%n sealed bodies are erased</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>printed a paper: its kind</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its key was destroyed; with a key it is seen by whom.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To be kept by somebody elsewhere, and held against the record another time:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letters of the record as it is now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opened by somebody with no part in it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opened the record, having no part in it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 entries looked at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopped before its end: nothing can be said of the record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a paper was issued, and the record of then shows another one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n papers, each made again from the record of then</source>
        <translation>
            <numerusform>%n paper, made again from the record of then</numerusform>
            <numerusform>%n papers, each made again from the record of then</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n papers can&apos;t be checked: they were issued before the record said what they were made of</source>
        <translation>
            <numerusform>%n paper can&apos;t be checked: it was issued before the record said what it was made of</numerusform>
            <numerusform>%n papers can&apos;t be checked: they were issued before the record said what they were made of</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n papers can&apos;t be checked: another version made them in another form</source>
        <translation>
            <numerusform>%n paper can&apos;t be checked: another version made it in another form</numerusform>
            <numerusform>%n papers can&apos;t be checked: another version made them in another form</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 Paper: %2.</source>
        <comment>entry 7: what is wrong with it. Paper: its kind.</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who opens a record with no part in it is asked why. Whether what they say holds is for people to say. While a visit of the patient is open nobody is asked: who opened the record then stands only in the list below.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>So far nobody was asked why they open a record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody gave a reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>signed by a key its author did not have, or for another purpose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its signature names other entries as its ground than those before it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its author could not sign in then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%1; before that %n wrong passphrases were typed, nobody knows by whom</source>
        <comment>signed in, and how many</comment>
        <translation>
            <numerusform>%1; before that %n wrong passphrase was typed, nobody knows by whom</numerusform>
            <numerusform>%1; before that %n wrong passphrases were typed, nobody knows by whom</numerusform>
        </translation>
    </message>
    <message>
        <source>kept in tables, or guarded by rules, that this program did not make.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its author had another role then than it says.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read who looked at and printed what</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>began the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>let in somebody new</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>changed the passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>made the passphrase dearer to guess</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gave new keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>retired somebody</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>came in by the recovery sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>made a new recovery sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was known of the record up to entry %1 does not agree, and nothing known before it does.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was known of the record up to entry %1 agrees, and what was known up to entry %2 does not.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Below what was done stands the code by which other systems know it, of the audit messages of DICOM.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::Band</name>
    <message numerus="yes">
        <source>%n seconds</source>
        <translation>
            <numerusform>%n second</numerusform>
            <numerusform>%n seconds</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n seconds</source>
        <extracomment>How long a timed phase has run, and how long it is asked to run</extracomment>
        <translation>
            <numerusform>%1 of %n second</numerusform>
            <numerusform>%1 of %n seconds</numerusform>
        </translation>
    </message>
    <message>
        <source>paused, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stopped short, %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::CardView</name>
    <message>
        <source>More follows below</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::ColleagueQuestion</name>
    <message>
        <source>Hand over to a colleague</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sign in and go on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The colleague&apos;s name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Their passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whoever goes on signs in here. What was seen until now stays with who saw it. Nobody signs what another saw.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::CorrectionForm</name>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The patient&apos;s own data</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is written stays. This is put beside it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Addendum to an entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Late entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To which entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It happened on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For instance 14:30</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is added</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why it is written now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No entry is chosen. Nothing was saved. Press the one this belongs to.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is not a time of day. Nothing was saved. Write it as 14:30.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wrong-chart mark of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Addendum, late entry, wrong chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written in the wrong chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was written here by mistake</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why it does not belong here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It stays readable, struck out, and counts for nothing here. This can&apos;t be taken back; a mistake in marking gets an addendum. Write it in the right chart as a late entry.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing here can be marked by you. Whoever wrote it, or an educator, marks it, once the visit is over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No entry is chosen. Nothing was marked. Press the one that was written here by mistake.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::DateField</name>
    <message>
        <source>dddd, d MMMM yyyy</source>
        <comment>date in full</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For instance 3 May 1961, or 1961-05-03</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <comment>date to type</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is not one clear day. Nothing was saved. Write the month as a word, for instance 3 May 1961.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 lies in the future. Nothing was saved. Check the day, the month and the year.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <comment>date of birth in full</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::ErasePage</name>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It stays in the record. Name nobody in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the second person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Passphrase of the second person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Destroy a patient&apos;s record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its key is destroyed. Nobody ever reads it again on this computer, with any passphrase or the recovery sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That there was a record, and who destroyed it when and why, stays and can be verified.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Papers that were printed stay where they are, and backups keep it until they are destroyed themselves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long a record has to be kept is said by law and local policy. This can&apos;t be taken back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Destroy it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An educator and an auditor, both here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each types their own passphrase, while the other looks away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2), %3</source>
        <comment>name, initials, role</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::ErrorStrip</name>
    <message>
        <source>Not done</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::GuardedPages</name>
    <message>
        <source>%1, born %2, number %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a file: what is wrong with it</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::HelpForm</name>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save and go to the papers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Going home with help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>While the rules say not yet: who does the next change, and whom to call.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Decided by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who was told</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The next change is done by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whom to call, with the number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The dressing was due on %1: this is later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The dressing is due on %1: this is later.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::HowItWent</name>
    <message>
        <source>How it went</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No step in hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done by the teacher</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hands-on help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With a cue</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n cues</source>
        <translation>
            <numerusform>%n cue</numerusform>
            <numerusform>%n cues</numerusform>
        </translation>
    </message>
    <message>
        <source>Unprompted so far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cue %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hands-on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done, not seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You did not see it; the visit goes on as if it was done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Does not apply: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::KeyStrip</name>
    <message>
        <source>Writing: letters are letters. Enter keeps, Esc leaves.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::KnownFields</name>
    <message>
        <source>Another paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a backup…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backups</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of two things that are known, what was rewritten lies behind the one that agrees and before the one that does not: the more are given, the closer it is named.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letters from a paper, or kept by somebody elsewhere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letters from paper %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which backup?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave out the backup %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None is held against the record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They are held against the record. On a paper they stand at the foot of each page.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::LanesView</name>
    <message>
        <source>%1 s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lanes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not yet: %1</source>
        <comment>lanes that nothing is in so far</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::LearnerCard</name>
    <message>
        <source>A visit is open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not begun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 competencies signed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for %1, born %2, number %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change due today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change due tomorrow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next change %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change overdue: due %1, none written down since</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left arm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right arm</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::LearnerForm</name>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Asked again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who is taught</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The person who will do it at home: a caregiver, or the patient.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Consent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Needs and barriers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A caregiver</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The patient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name, as it is written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Telephone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who learns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the patient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Language to teach in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>May be taught</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>May be told about the patient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Given by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The patient, or who decides for the patient.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Agreed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is done about it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who else is at home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the learner is afraid of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the learner&apos;s own words.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Needed, a qualified one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What makes learning harder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Interpreter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing ticked means: not asked yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Asked, not agreed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Either it was agreed to, or it was not: not both.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Either none was found, or tick what it is: not both.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tick what was found, or that none was: only then the answers below are kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Consent and needs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What nobody has asked yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The earlier answers stay in the record. What you leave as it stands is not written again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tick what was agreed, or that it was not: only then this is kept.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::LearnerWindow</name>
    <message>
        <source>For the learner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read aloud</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This computer can&apos;t read it aloud. The words stay in view.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Esc, F11</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The keys of the visit rest meanwhile.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::LearnersPage</name>
    <message>
        <source>Load more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Learners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who is being taught, how far, and what is due.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a patient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search by name or record number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is found by these letters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The beginning of a name or of a record number is enough. Accents and capitals don&apos;t matter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show everybody</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is being taught yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Here will be each learner with what is held, what is next and what is due. It begins with the patient whose line is to be cared for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add the first patient</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::LineForm</name>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it measured at insertion is what later readings are held against.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left arm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right arm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inserted on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind of line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The patient&apos;s own left or right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At insertion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What lies on it now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length outside, from skin to hub, in millimetres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>3 centimetres are 30 millimetres.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marks in view</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it empty when the line has none.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Round the arm, in millimetres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lumens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dressing last changed on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dressing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What holds the line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Skin antiseptic</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What nobody told you stays open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the correction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correct the line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change what was written down wrong. What it said before stays in the record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why it is corrected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For instance: typed wrong.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A line of this kind, in this arm and from this day is in the record already. If it is the same line, go back and correct it there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The line is corrected. What it said before stays in the record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The line is saved.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::LineRemovedForm</name>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save that it was removed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The line was removed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is no longer offered at the start of a visit, and no next change is shown for it. The record keeps it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Removed on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For instance: treatment is finished.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is written down that the line was removed. Below it can be taken back.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::LockPage</name>
    <message>
        <source>Passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Locked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody else signs in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is signed in</source>
        <comment>initials</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything is as it was left; what was recorded is saved.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::LockWarning</name>
    <message numerus="yes">
        <source>Nobody is here, it seems. This locks in %n seconds. Press any key or move the pointer to stay.</source>
        <translation>
            <numerusform>Nobody is here, it seems. This locks in %n second. Press any key or move the pointer to stay.</numerusform>
            <numerusform>Nobody is here, it seems. This locks in %n seconds. Press any key or move the pointer to stay.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::MainWindow</name>
    <message>
        <source>Ninebark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Learners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sign</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Papers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alt+%1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smaller text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Larger text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light, dark, high contrast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who works here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who works here: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whom to call, colours, text, keys (Alt+7)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Locked</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::NewPassphrase</name>
    <message>
        <source>Passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At least %1 letters, any letters and spaces. Four or five words that do not belong together are easy to keep and hard to guess.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same once more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The two are not the same. Type it here again.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::NewcomerPage</name>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You sign in by it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Initials, as they stand on a label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first person here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A new record begins, sealed from its first entry on. You become its educator and let the others in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open with the recovery sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For when nobody&apos;s passphrase is left. You come in as an educator with a new passphrase; the record says that the sheet was used.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to signing in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who are you</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The four lines of the sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Small letters and left-out dashes are as good.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is kept nowhere. Whoever forgets theirs is let in again by an educator; where there is no other, by the recovery sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is the record %1.</source>
        <comment>its name</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::NumberField</name>
    <message>
        <source>A whole number from %1 to %2 is needed here. Nothing was saved. Write it in figures.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::Page</name>
    <message>
        <source>Still to be answered: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; </source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::PapersPage</name>
    <message>
        <source>Print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Papers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look first. What leaves here is written into the record as issued.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No papers yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Here will be the chart record, the certificate, and a note to copy, once a learner is chosen and has had a visit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the learners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>US Letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no certificate while the rules say not yet or a signature is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chart note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>✓  Printed and noted in the record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>✓  The chart note is copied and noted in the record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>✓  Saved as %1 and noted in the record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recorded as issued, but not printed. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recorded as issued, but not saved. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy the chart note (F7)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not decided yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This paper says who does the next change, when, and whom to call. Nobody has written that down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write it down</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::PassphraseField</name>
    <message>
        <source>Show it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show it: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At least %1 letters are needed. Take four or five words that do not belong together.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is too long to be typed. Up to %1 letters fit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same letters come again and again, or count on. Take four or five words that do not belong together.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is little more than your name. Take words that nobody would guess of you.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Some of these signs are no letters. Type it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is still empty. Type your passphrase.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is not your passphrase. Nothing was done. Type it again.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::PatientForm</name>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save and go on to the line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A new patient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The person whose line is cared for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name, as it is written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Born</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The second thing the patient is known by.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Language</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Allergies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask before supplies are chosen.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::PeopleList</name>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let somebody in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who may sign in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whoever is let in reads everything here, from its beginning.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Educators let people in, give new passphrases, and retire.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not for every eye</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Educators and auditors see who works here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>name, initials</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, signed in now</source>
        <comment>a role</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, retired</source>
        <comment>a role</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Retire</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New passphrase for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Retire %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The recovery sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When its envelope was opened, or it can&apos;t be found, make a new one. The old one opens nothing that is recorded from then on; what it opened until then it still opens.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New recovery sheet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::PeoplePage</name>
    <message>
        <source>The new sheet holds. Destroy the old one.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::PersonPage</name>
    <message>
        <source>Add the line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it measured at insertion is needed before a visit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add who is taught</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A caregiver, or the patient.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask for consent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without consent nobody is taught.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start a visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show it, guide, or watch a return demonstration.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on with the visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is open and saved as it stands.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Questions or drills are still open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See and sign</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Competencies are met and wait for your signature.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Papers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All is signed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All learners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>born %1, number %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who is taught</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add somebody</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>So far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No pack fits yet. Starting a visit says why.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ready by the rules</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Competencies: %1 of %2 signed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>signed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>met</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Allergies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not asked yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>asked, none known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Needs and barriers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>asked, none found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Afraid of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Destroy this record</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Taught by %n packs</source>
        <translation>
            <numerusform>Taught by %n pack</numerusform>
            <numerusform>Taught by %n packs</numerusform>
        </translation>
    </message>
    <message>
        <source>What is shown here, signed and printed is of the one chosen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, version %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask consent and needs again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask consent and needs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Addendum, late entry, wrong chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>somebody</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>. Why: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n marks in view</source>
        <translation>
            <numerusform>%n mark in view</numerusform>
            <numerusform>%n marks in view</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2, on %3</source>
        <comment>a measure, what was read, date</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line, removed on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Corrected on %1 by %2. Before: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On %1 %2 wrote that it was not removed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>finished</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stopped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correct this line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was removed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was not removed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visits so far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taught</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n more before these</source>
        <translation>
            <numerusform>%n more before these</numerusform>
            <numerusform>%n more before these</numerusform>
        </translation>
    </message>
    <message>
        <source>Ask allergies again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask allergies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is saved, beside what was written before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>written in the wrong chart</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::Question</name>
    <message>
        <source>%1 already means “%2”. Choose another key.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is needed in every window. Choose another key.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press the key that is wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a line, press the key. A pedal is a key too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All as at first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The patient is unwell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Called away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Patient or learner does not want it now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop the visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop, keep the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before you leave the patient:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The site is covered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The line is held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What happened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose why the visit stops.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take over now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From now on every step counts as done by you, not by the learner.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To keep the patient safe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The learner asked for it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not enough time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hand over to a colleague</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was seen until now stays yours; what is seen from now on is theirs. Nobody signs what another saw.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no other teacher on the list of staff.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose who goes on teaching.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The dressing change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write it down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What lies on the site now?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, changed every %2 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the site looked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the patient bore it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Initials on the label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write how the site looked; “no redness, dry” is enough.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What went wrong?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the way back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing that is clean now can be touched.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was touched, or is no longer clean?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write in a few words what was seen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It happened earlier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At which step?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What went wrong there?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the step, then what went wrong.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 mm, %2 mm when the line was put in: changed by %3 mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Call: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tell the team.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write down a measure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Millimetres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marks in view, where the line has marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the millimetres, or count the marks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Esc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seen at one moment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose all of them: one way back answers for all.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose what was seen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>And something else, in a few words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 marks, %2 when the line was put in: changed by %3 mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finish the change. Never push the line in. Do not use it until you are told.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No count of marks was written down when the line was put in. Measure the millimetres, to compare.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The marks say %1 mm. Measure and count again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The site is not covered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The line is not held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose why; then you can take over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose what lies on it now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you don&apos;t answer here is recorded as not said, never as no. A second press takes an answer back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found on the patient: it was there before, and is no lapse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 marks, %2 mm apart, reach over more than %3 mm: one of the two is wrong. Measure and count again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, as left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, as found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write it down, go on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Or: why it could not be measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the figure, or why it could not be measured.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Either the figure, or why there is none: not both.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found there, nobody&apos;s lapse: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Happened after it: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 mm can&apos;t be right; %2 to %3 mm can. 3 centimetres are 30 millimetres. Nothing was written down.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::ReasonPage</name>
    <message>
        <source>A record you have no part in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You have written nothing in it, and no visit of it was handed to you. You may open it. Why you do is kept with your name and the time, and an auditor reads it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In your words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why you open it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, born %2, number %3</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::RecoverySheetPage</name>
    <message>
        <source>Type its third line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>So that the sheet is sure to be in your hands before this goes away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The recovery sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It opens the record when nobody&apos;s passphrase is left. It is shown this once and kept nowhere. Print it, or write it down, and lock it away from this computer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The four lines of the recovery sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whoever has this sheet and this computer reads everything. Without the sheet and without a passphrase nobody ever reads it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print the sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sheet is in my hands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is not the third line. Compare it with the sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opens the record %1. Made %2.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::RefusedWindow</name>
    <message>
        <source>Ninebark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record was not opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is looked for in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Try again</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::ResetPage</name>
    <message>
        <source>A new passphrase for somebody</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For when theirs is lost. They get new keys, and the record says who gave them. What they signed until now still verifies, by the keys from before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Be sure that it is this person who sits down here. The passphrase is typed by them, while nobody looks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give new keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>name, initials</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 signs in by the new passphrase from now on.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::RetirePage</name>
    <message>
        <source>Somebody does not work here any more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They can&apos;t sign in any more, and nothing that is recorded from now on opens for them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What they recorded and signed stays, with their name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What they could read until now they may have kept: no program can take that back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This can&apos;t be taken back. Somebody who returns is let in anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Retire</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>name, initials</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Retire %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 can&apos;t sign in any more.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::SeenColumn</name>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something else…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Several at one moment…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earlier, or left out…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No helper at hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unlock names and notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seen going wrong, or found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found: %1</source>
        <comment>on the patient, nobody&apos;s lapse</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::SeenLapses</name>
    <message>
        <source>%1 – withdraw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Withdrawn: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Withdraw: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::SettingsPage</name>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save whom to call</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whom to call is part of the record. The rest is kept on this computer and holds as soon as it is chosen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keys of a visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every act of a visit has a key, and a pedal is a key too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whom to call</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stands on stop-and-call cards and on every paper that goes home. Try each number once before you save it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ambulance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As it is dialled from a home.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The team, day and night</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody answers at any hour.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The team, the same day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For what can wait until it opens.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Local policy that comes first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its name, as it is printed on papers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>✓  Saved. Cards and papers say this from now on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How it looks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As this computer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>High contrast, in this computer&apos;s colours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Colours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size of the text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In a visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One soft tone when a timed phase is over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Never in a return demonstration, and never repeated.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The learner&apos;s window opens by itself on a second screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On one screen it is turned by its key, whatever is chosen here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text at %1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n minutes</source>
        <translation>
            <numerusform>%n minute</numerusform>
            <numerusform>%n minutes</numerusform>
        </translation>
    </message>
    <message>
        <source>When nobody is here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Locks when nothing was touched for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>20 seconds before, it says so. In a visit the keys and clocks go on; names and notes are hidden.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::SheetLines</name>
    <message>
        <source>Line %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>This line has %n letters here; ten are printed. Compare it with the sheet.</source>
        <translation>
            <numerusform>This line has %n letter here; ten are printed. Compare it with the sheet.</numerusform>
            <numerusform>This line has %n letters here; ten are printed. Compare it with the sheet.</numerusform>
        </translation>
    </message>
    <message>
        <source>This line is not as it was printed. Compare it letter by letter.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::SignInPage</name>
    <message>
        <source>Your name, as it was entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sign in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything here is sealed. Your passphrase opens it; nobody else, and no program, can.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who are you</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forgotten? An educator can let you in with a new passphrase. What you signed stays signed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open with the recovery sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::SignInWindow</name>
    <message>
        <source>Ninebark</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::SignPage</name>
    <message>
        <source>Going home with help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sign</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before signing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was seen, what the rules find, then one signature for all that is met.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to sign yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Here will be every step and what was recorded for it, once a learner is chosen and has had a visit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the learners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every step, every return demonstration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>◆ decides readiness. ▲ something was seen going wrong.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No return demonstration yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>✓  Ready by the rules</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>○  Not yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Competencies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>met, not signed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>signed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seen by somebody else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody signs what another saw. These can sign:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unknown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I, %1 (%2), saw %3 do the following as the pack “%4”, version %5, asks, and I sign for it: %6. Local policy and the licensed clinician&apos;s judgement come first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing waits for your signature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Competencies that are met and that you saw yourself will stand here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You sign this</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The learner&apos;s side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signs here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Agrees by voice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Declines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is not permitted to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is not able to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Acknowledges</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear the drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Or the learner types the name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Sign %n competencies</source>
        <translation>
            <numerusform>Sign %n competency</numerusform>
            <numerusform>Sign %n competencies</numerusform>
        </translation>
    </message>
    <message>
        <source>The learner has not signed yet. Nothing was signed. Draw or type the name above, or choose another answer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not said why. Nothing was signed. Write one line why the learner does not sign.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The learner: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Handed over in the middle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody saw all of these, so nobody can sign them yet. Watch each once more from its beginning to its end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: seen by %2</source>
        <comment>a competency, and who</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a competency, and who can sign it</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>signed; more was recorded since</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2, signed as what was seen. %3 (%4)</source>
        <comment>name, role, local time, offset</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>role not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The interpreter: %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no name written down</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>The ledger has %n entries up to now. It rests on all of them.</source>
        <translation>
            <numerusform>The ledger has %n entry up to now. It rests on it.</numerusform>
            <numerusform>The ledger has %n entries up to now. It rests on all of them.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::SignaturePad</name>
    <message>
        <source>Place to sign</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::SigningPage</name>
    <message>
        <source>Your passphrase, once for all of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sign with your passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A signature is never undone. What is recorded later is shown as new since then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back, nothing is signed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sign</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You sign this</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2), %3</source>
        <comment>name, initials, role</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>date with time, offset from UTC</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::StaffPage</name>
    <message>
        <source>Add to the staff</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who works here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything recorded from now on carries this name. Press yours when you take over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody yet. Add yourself below; then you can begin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2), %3</source>
        <comment>name, initials, role</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody new</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Initials, as they stand on a label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Teaches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Teaches and looks after packs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reads only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Role</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on as %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press your name, then go on. Everything recorded from then on carries it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who is at this desk now</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::StartPage</name>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin the visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start of a visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Teaching %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The right patient, the right line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How it is done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Teaching pack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Around it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>born %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>number %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2, inserted %3</source>
        <comment>arm, kind of line, date</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two identifiers, as the patient says them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Guided, words in view</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Return demonstration, from memory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the patient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On a practice arm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Talked through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On whom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same kit that will be used at home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dressing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What holds the line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Skin antiseptic</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is taught</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who watches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No interpreter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Qualified, present</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Qualified, by telephone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Qualified, by video</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody not qualified</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name or number of the interpreter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The learner sees the clock in a return demonstration, as at home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Minutes there are</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Interpreter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As last time: %1; %2</source>
        <comment>on whom, and with which kit</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the same kit as at home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another kit than at home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another kit than at home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arm, line and kit agree</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask the patient for name and date of birth, and tick what agrees.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checked with the patient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at arm, line and kit together, then tick it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No pack is chosen, and nothing has begun. What does not fit says why below. Correct the line or the kit above, or choose here what is to be taught.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No pack fits, and nothing has begun. Each says why below. Correct the line or the kit above; if both are right, there is nothing here to teach it by: ask who keeps the packs of your unit.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::StepList</name>
    <message>
        <source>Parts and steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with a lapse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a lapse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, a lapse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press when it was seen before its turn</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::StepRow</name>
    <message>
        <source>now: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::StepStrip</name>
    <message>
        <source>ddd d MMM</source>
        <comment>short day above a column</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::StepView</name>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Watch for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopped short at %1 of %2 seconds. It has to run again, whole.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was interrupted. It has to run again, whole.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>All %n steps</source>
        <translation>
            <numerusform>All %n step</numerusform>
            <numerusform>All %n steps</numerusform>
        </translation>
    </message>
    <message>
        <source>Write down the dressing change.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All steps are done. Close the visit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What lies on the line now decides when the next change is due.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was recorded is kept. After that comes asking back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your judgement: the pack asks first for what does not hold now: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop and call: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No way back was found after: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the site covered and the line held.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Call: %1</source>
        <comment>whom, with the number, and why</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::UnlockQuestion</name>
    <message>
        <source>Unlock names and notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unlock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The visit goes on meanwhile; its clocks run.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::VisitHeader</name>
    <message>
        <source>, born %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taught: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> – the teacher has taken over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>paused</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no steps left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Locked: names and notes are hidden</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Allergies: not asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No allergy known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Allergies: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; </source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>steps: at least %n seconds</source>
        <translation>
            <numerusform>steps: at least %n second</numerusform>
            <numerusform>steps: at least %n seconds</numerusform>
        </translation>
    </message>
    <message>
        <source>steps: at least %1 min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time: %1 min left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time: %1 min over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; %2</source>
        <comment>the time there is, and what the steps need</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::VisitPage</name>
    <message>
        <source>Everything that has a key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the keys…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write down the change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close the visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Call first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The keys are locked for wiping. %1 unlocks them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one cue less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hands-on help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lapse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>caught it alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>show the way back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rest of this seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>go on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pause</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>take over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hand over to a colleague</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>turn screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tone off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tone on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lock to wipe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pack of this visit is not on this computer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record of the visit is safe. Put the pack back, or go on where the visit was opened.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No visit is open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Once a visit is started, this page shows the step in hand, its clock, and what was seen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a learner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop and call: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No way back is offered for this. Local policy comes first. Pressed by mistake: %1 takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop the visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No way back was found after: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pack knows no safe way on from here. Keep the site covered and the line held, and call.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Going on from here is your judgement, by local policy.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This visit was left at %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record is exactly as it was.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was clean was not watched, so it counts no longer: %1. The way back comes first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Then it goes on with: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If a helper has come, %1 looks for the way back anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>several at once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>something else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it happened earlier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no helper at hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read aloud</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is the visit of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a colleague</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was seen until now stays theirs; what is seen from now on is yours. Nobody signs what another saw.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An auditor reads it and does not go on with it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They can also come back and sign in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on as its teacher</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The computer slept. The last mark is of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No lapse has this digit now. %1 shows the lapses with their digits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This key does nothing in a visit. %1 shows every key.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing else can be said now: take over, or stop the visit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is a colleague&apos;s visit: its keys wait until somebody goes on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The visit was left: first %1 goes on with it, or %2 stops it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is read aloud while something is asked here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press the key, or choose with Tab and Enter. Esc leaves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From now on no helper is at hand: each way back does without.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From now on a helper is at hand for the way back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A question is open beside the step: answer it, or leave it with Esc.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A question is open beside the step. Esc leaves it.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::WaitStrip</name>
    <message numerus="yes">
        <source>After wrong passphrases the next try waits longer: %n seconds. Nobody is locked out for good.</source>
        <translation>
            <numerusform>After wrong passphrases the next try waits longer: %n second. Nobody is locked out for good.</numerusform>
            <numerusform>After wrong passphrases the next try waits longer: %n seconds. Nobody is locked out for good.</numerusform>
        </translation>
    </message>
    <message>
        <source>You can try again now.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::WayBackView</name>
    <message>
        <source>The way back after being away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The way back: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finish, then call: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caught alone. The learner finds the way back unaided.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The learner was shown the way back: that is a cue.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only you see this. Wait whether the learner catches it alone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Throw away: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open new: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n seconds</source>
        <translation>
            <numerusform>%n second</numerusform>
            <numerusform>%n seconds</numerusform>
        </translation>
    </message>
    <message>
        <source>Then all is done, in %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Then the visit goes on, in %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The way back, after withdrawing: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The lapse is withdrawn. What was done since has to be made good before the visit goes on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found on the patient, no lapse: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only you see this. Wait whether the learner finds it and says what follows.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui::WordsField</name>
    <message>
        <source>This is %1 letters long; up to %2 fit. Nothing was saved. Write it shorter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is still empty. Nothing was saved. Write it here.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
