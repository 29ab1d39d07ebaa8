# What a results sheet says: verdict, ruler, packages, what the result says and does not say.
